using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;

namespace MeltShop.Records.Reading.History;

/// <summary>The filter and the place as a query that an index can answer.</summary>
internal static class HistoryQuery
{
    public static IQueryable<Heat> Of(RecordsContext db, HistoryFilter filter, HistoryPlace? after)
    {
        IQueryable<Heat> heats = db.Heats;
        if (filter.GradeId is { } grade) heats = heats.Where(h => h.GradeId == grade);
        if (filter.FurnaceId is { } furnace) heats = heats.Where(h => h.FurnaceId == furnace);
        if (filter.State is { } state) heats = heats.Where(h => h.State == state);
        if (filter.From is { } from) heats = heats.Where(h => h.StartedAt >= from);
        if (filter.Before is { } before) heats = heats.Where(h => h.StartedAt < before);
        if (filter.Verdict is { } verdict) heats = heats.Where(h => Decided(db, verdict).Any(heatId => heatId == h.Id));
        if (filter.Number?.Trim() is { Length: > 0 } text)
        {
#pragma warning disable CA1304, CA1311, CA1862 // translated to SQL
            var upper = text.ToUpperInvariant();
            heats = heats.Where(h => h.Number.ToUpper().Contains(upper));
#pragma warning restore CA1304, CA1311, CA1862
        }

        // The first comparison alone bounds the index; the second only parts heats that started in the same microsecond.
        if (after is not null)
            heats = heats.Where(h => h.StartedAt <= after.StartedAt && (h.StartedAt < after.StartedAt || h.Id < after.Id));
        return heats.OrderByDescending(h => h.StartedAt).ThenByDescending(h => h.Id);
    }

    private static IQueryable<long> Decided(RecordsContext db, CastingVerdict verdict) =>
        from decision in db.CastingDecisions
        join ladle in db.TreatedLadles on decision.TreatedLadleId equals ladle.Id
        where decision.Verdict == verdict && decision.TestUnit == null
            && !db.CastingDecisions.Any(later => later.TreatedLadleId == decision.TreatedLadleId && later.TestUnit == null && later.Id > decision.Id)
        select ladle.HeatId;
}
