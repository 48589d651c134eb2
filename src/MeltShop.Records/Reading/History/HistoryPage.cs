using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.History;

/// <summary>All heats there ever were, a page at a time, the latest first; where a number is looked for, the greatest number first.</summary>
public sealed class HistoryPage(IDbContextFactory<RecordsContext> contexts)
{
    public const int PageSize = 50;

    /// <param name="filter">What to look for.</param>
    /// <param name="after">Where the page before ended; null for the first page.</param>
    /// <param name="ct">Stops the reading.</param>
    public async Task<HistoryView> Load(HistoryFilter? filter = null, HistoryPlace? after = null, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var heats = await HistoryQuery.Of(db, filter ?? new(), after, ct);
        var rows = await heats.Take(PageSize + 1).Select(h => new
        {
            h.Id, h.Number, h.State, h.StartedAt, h.ClosedAt,
            Grade = db.Grades.Single(g => g.Id == h.GradeId).Code,
            Furnace = db.Furnaces.Single(f => f.Id == h.FurnaceId).Name,
        }).ToListAsync(ct);
        var page = rows.Take(PageSize).ToList();
        var ids = page.Select(h => h.Id).ToList();
        var ladles = (await db.TreatedLadles.Where(l => ids.Contains(l.HeatId)).GroupBy(l => new { l.HeatId, l.State })
            .Select(g => new { g.Key.HeatId, g.Key.State, Count = g.Count() }).ToListAsync(ct)).ToLookup(l => l.HeatId);
        var next = rows.Count > PageSize ? new HistoryPlace(page[^1].StartedAt, page[^1].Id) : null;
        return new(
            [.. page.Select(h => new HistoryRow(
                h.Id, h.Number, h.Grade, h.Furnace, h.State, h.StartedAt, h.ClosedAt, ladles[h.Id].ToDictionary(l => l.State, l => l.Count)))],
            next);
    }
}
