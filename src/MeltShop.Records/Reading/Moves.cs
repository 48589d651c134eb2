using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading;

/// <summary>The facts that were moved from one heat to another; both heats show them.</summary>
internal sealed class Moves
{
    private const string HeatId = nameof(HeatId);

    private readonly Dictionary<long, HeatLink> to = [];
    private readonly Dictionary<long, HeatLink> from = [];

    /// <summary>Those of one kind that came to a heat or left it: one statement.</summary>
    public static async Task<Moves> Load<TFact>(RecordsContext db, long heatId, DateTimeOffset? known, CancellationToken ct)
        where TFact : Fact
    {
        var until = known ?? DateTimeOffset.MaxValue;
        var pairs =
            from later in db.Set<TFact>().Where(f => f.EnteredAt <= until)
            join former in db.Set<TFact>() on later.SupersedesId equals former.Id
            select new { Former = former, Later = later };
        var left = pairs.Where(p => EF.Property<long>(p.Former, HeatId) == heatId && EF.Property<long>(p.Later, HeatId) != heatId)
            .Select(p => new { p.Former.Id, LaterId = p.Later.Id, Other = EF.Property<long>(p.Later, HeatId), IsGone = true });
        var came = pairs.Where(p => EF.Property<long>(p.Later, HeatId) == heatId && EF.Property<long>(p.Former, HeatId) != heatId)
            .Select(p => new { p.Former.Id, LaterId = p.Later.Id, Other = EF.Property<long>(p.Former, HeatId), IsGone = false });
        var rows = await (
            from move in left.Concat(came)
            join heat in db.Heats on move.Other equals heat.Id
            select new { move.Id, move.LaterId, move.IsGone, heat.Number, Other = heat.Id }).ToListAsync(ct);
        var moves = new Moves();
        foreach (var row in rows)
        {
            if (row.IsGone) moves.to[row.Id] = new(row.Other, row.Number);
            else moves.from[row.LaterId] = new(row.Other, row.Number);
        }

        return moves;
    }

    public Origin Mark(Origin origin) =>
        origin with { MovedTo = to.GetValueOrDefault(origin.FactId), MovedFrom = from.GetValueOrDefault(origin.FactId) };
}
