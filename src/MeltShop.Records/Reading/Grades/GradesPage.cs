using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Grades;

/// <param name="More">True where there are more than are shown.</param>
public sealed record GradesView(IReadOnlyList<GradeView> Grades, bool More);

/// <summary>The grades with their windows and recipes.</summary>
public sealed class GradesPage(IDbContextFactory<RecordsContext> contexts)
{
    public const int Most = 200;

    public async Task<GradesView> Load(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var rows = await GradeRows.Load(db.Grades.OrderBy(g => g.Code).Take(Most + 1), ct);
        return new(rows.Take(Most).InNaturalOrder(g => g.Code), rows.Count > Most);
    }

    /// <summary>All of them in the order of their codes, to choose from.</summary>
    public async Task<IReadOnlyList<GradeView>> All(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await GradeRows.Load(db.Grades.OrderBy(g => g.Code), ct);
    }

    /// <summary>One grade, or null.</summary>
    public async Task<GradeView?> Grade(long id, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return (await GradeRows.Load(db.Grades.Where(g => g.Id == id), ct)).SingleOrDefault();
    }
}
