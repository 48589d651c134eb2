using MeltShop.Operations.Grades;
using MeltShop.Records.Grades;
using MeltShop.Records.People;

namespace MeltShop.Web.Demo;

/// <summary>Takes the grades of the demo into the shop.</summary>
internal static class DemoGrades
{
    /// <returns>The ids by designation.</returns>
    public static async Task<Dictionary<string, long>> Add(DemoHands hands, DemoCatalogue catalogue, CancellationToken cancellation)
    {
        var ids = new Dictionary<string, long>();
        foreach (var grade in catalogue.Grades)
        {
            cancellation.ThrowIfCancellationRequested();
            ids[grade.Code] = await hands.Do(hands.The<AddGrade>(), Role.Metallurgist, new(
                DemoKey.Of($"grade/{grade.Code}"),
                hands.Now,
                grade.Code,
                grade.Family,
                $"{grade.Source}. Recipe: {grade.Recipe.Source}",
                [.. grade.Furnace.Select(w => Window(WindowStage.Furnace, w)), .. grade.Poured.Select(w => Window(WindowStage.Poured, w))],
                Recipe(grade)));
        }

        return ids;
    }

    private static GradeWindowInput Window(WindowStage stage, DemoWindowRow row) =>
        new(stage, row.Quantity, row.Least, row.Aim, row.Most, row.Margin);

    // The floor is the least magnesium of the poured window: what the last mould has to have.
    private static GradeRecipeInput Recipe(DemoGrade grade) => new(
        grade.Recipe.Treatment?.TargetMagnesiumPercent,
        grade.Recipe.Treatment is null ? null : grade.Poured.Single(w => w.Quantity == "Mg").Least,
        grade.Recipe.Treatment?.SulphurLeftPercent,
        grade.Recipe.Treatment?.AlloyCode,
        grade.Recipe.Inoculation.InoculantCode,
        grade.Recipe.Inoculation.RatePercent,
        grade.Recipe.Treatment?.AtMinutes,
        grade.Recipe.Treatment?.CoverCode,
        grade.Recipe.Treatment?.CoverPercent);
}
