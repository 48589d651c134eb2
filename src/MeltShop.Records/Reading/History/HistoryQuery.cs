using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.History;

/// <summary>The filter and the place as a query that an index can answer.</summary>
internal static class HistoryQuery
{
    public static async Task<IQueryable<Heat>> Of(RecordsContext db, HistoryFilter filter, HistoryPlace? after, CancellationToken ct)
    {
        IQueryable<Heat> heats = db.Heats;
        if (filter.GradeId is { } grade) heats = heats.Where(h => h.GradeId == grade);
        if (filter.FurnaceId is { } furnace) heats = heats.Where(h => h.FurnaceId == furnace);
        if (filter.State is { } state) heats = heats.Where(h => h.State == state);
        if (filter.From is { } from) heats = heats.Where(h => h.StartedAt >= from);
        if (filter.Before is { } before) heats = heats.Where(h => h.StartedAt < before);
        if (filter.Verdict is { } verdict) heats = Decided(heats, db, verdict);
        if (filter.Number?.Replace("\0", "", StringComparison.Ordinal).Trim() is { Length: > 0 } words)
        {
            var below = after is null ? null : await db.Heats.Where(h => h.Id == after.Id).Select(h => h.Number).FirstOrDefaultAsync(ct);
            return heats.Beginning(await NumberSearch.Beginnings(db, words, ct), below, HistoryPage.PageSize + 1);
        }

        // The first comparison alone bounds the index; the second only parts heats that started in the same microsecond.
        if (after is not null)
            heats = heats.Where(h => h.StartedAt <= after.StartedAt && (h.StartedAt < after.StartedAt || h.Id < after.Id));
        return heats.OrderByDescending(h => h.StartedAt).ThenByDescending(h => h.Id);
    }

    // A release is what most heats have: going back in time finds fifty at once. All else is rare and is looked up by itself: going back in time would read every heat there ever was.
    private static IQueryable<Heat> Decided(IQueryable<Heat> heats, RecordsContext db, CastingVerdict verdict) => verdict == CastingVerdict.Release
        ? heats.Where(h => LastDecided(db, verdict).Any(l => l.HeatId == h.Id))
        : heats.Where(h => LastDecided(db, verdict).Select(l => l.HeatId).Contains(h.Id));

    // The greatest id, and not that none is greater: PostgreSQL would make a join over all decisions of that.
    private static IQueryable<TreatedLadle> LastDecided(RecordsContext db, CastingVerdict verdict) =>
        from decision in db.CastingDecisions
        join ladle in db.TreatedLadles on decision.TreatedLadleId equals ladle.Id
        where decision.Verdict == verdict && decision.TestUnit == null
            && decision.Id == db.CastingDecisions.Where(d => d.TreatedLadleId == decision.TreatedLadleId && d.TestUnit == null).Max(d => d.Id)
        select ladle;
}
