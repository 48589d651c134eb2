using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Grades;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Grades;

/// <summary>Reads grades with their windows in one query.</summary>
internal static class GradeRows
{
    public static async Task<IReadOnlyList<GradeView>> Load(IQueryable<Grade> which, CancellationToken ct)
    {
        var grades = await which.AsNoTracking().AsSingleQuery().Include(g => g.Windows).ToListAsync(ct);
        return [.. grades.Select(View)];
    }

    private static GradeView View(Grade g) => new(
        g.Id, g.Version, g.Code, g.Family, g.Source, g.IsActive, g.Recipe is { } r ? View(r) : null,
        [.. g.Windows.OrderBy(w => w.Stage).ThenBy(w => Place(w.Quantity)).ThenBy(w => w.Quantity, StringComparer.Ordinal).Select(View)]);

    private static WindowView View(GradeWindow w) => new(w.Stage, w.Quantity, w.Least, w.Aim, w.Most, w.Margin);

    private static RecipeView View(GradeRecipe r) => new(
        r.TargetMgPercent, r.MgFloorPercent, r.SulphurLeftPercent, r.TreatmentAlloyCode, r.InoculantCode, r.InoculantRatePercent,
        r.MinutesToLastMould, r.CoverCode, r.CoverRatePercent);

    private static int Place(string quantity)
    {
        for (var place = 0; place < Element.All.Count; place++)
        {
            if (Element.All[place].Symbol == quantity) return place;
        }

        return int.MaxValue;
    }
}
