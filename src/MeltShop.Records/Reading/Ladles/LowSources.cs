using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Ladles;

/// <summary>Iron that a ladle, a pouring furnace or a trough took from a ladle whose own magnesium came back under its floor.</summary>
/// <param name="LadleId">That ladle.</param>
/// <param name="MgPercent">What its sample said, %.</param>
/// <param name="FloorPercent">Its floor, %.</param>
/// <param name="From">When its iron came: what was poured afterwards is in doubt.</param>
/// <param name="Until">When magnesium was given to the mixture, the sample known; null where none was.</param>
public sealed record LowSource(
    long LadleId, int Ordinal, string HeatNumber, double MgPercent, double FloorPercent, DateTimeOffset From, DateTimeOffset? Until)
{
    /// <summary>True for a mould whose pour ended while that iron was in it.</summary>
    public bool Concerns(DateTimeOffset pouredAt) => pouredAt > From && !(pouredAt > Until);
}

/// <summary>Follows iron from ladle to ladle, for a doubt that travels with it.</summary>
public static class LowSources
{
    private sealed record Came(long RestId, long LadleId, DateTimeOffset LeftAt, DateTimeOffset CameAt);

    private sealed record Measured(long LadleId, DateTimeOffset ObservedAt, double Percent);

    /// <summary>The sources of a ladle that came back low, through whatever ladles; nothing for one that was tapped from a furnace alone.</summary>
    public static async Task<IReadOnlyList<LowSource>> Of(RecordsContext db, long treatedLadleId, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(db);
        var came = await Sources(db, treatedLadleId, ct);
        if (came.Count == 0) return [];
        var ids = came.Select(c => c.LadleId).Distinct().ToList();
        var floors = await db.InForce<PocketCard>().Where(c => ids.Contains(c.TreatedLadleId) && c.MgFloorPercent != null)
            .GroupBy(c => c.TreatedLadleId).Select(g => new { g.Key, Floor = g.Max(c => c.MgFloorPercent!.Value) }).ToDictionaryAsync(c => c.Key, c => c.Floor, ct);
        var measured = await db.InForce<Sample>().AsNoTracking()
            .Where(s => SampleKinds.Treated.Contains(s.Kind) && s.TreatedLadleId != null && ids.Contains(s.TreatedLadleId.Value))
            .SelectMany(s => s.Means.Where(m => m.Element == Element.Mg), (s, m) => new Measured(s.TreatedLadleId!.Value, s.ObservedAt, m.Percent)).ToListAsync(ct);
        var low = measured.Where(m => floors.TryGetValue(m.LadleId, out var floor) && m.Percent < floor).ToLookup(m => m.LadleId);
        if (low.Count == 0) return [];
        List<long> dosable = [.. ids, treatedLadleId];
        var doses = (await db.InForce<MagnesiumDose>().Where(d => dosable.Contains(d.TreatedLadleId)).Select(d => new { d.TreatedLadleId, d.ObservedAt }).ToListAsync(ct))
            .ToLookup(d => d.TreatedLadleId, d => d.ObservedAt);
        var names = await (
            from ladle in db.TreatedLadles
            join heat in db.Heats on ladle.HeatId equals heat.Id
            where ids.Contains(ladle.Id)
            select new { ladle.Id, ladle.Ordinal, heat.Number }).ToDictionaryAsync(l => l.Id, ct);
        return
        [
            .. from iron in came
               // What was topped up between the sample and the pouring over is not what the sample says.
               let last = low[iron.LadleId].Where(m => !doses[iron.LadleId].Any(d => d > m.ObservedAt && d <= iron.LeftAt)).MaxBy(m => m.ObservedAt)
               where last is not null
               let known = last.ObservedAt > iron.CameAt ? last.ObservedAt : iron.CameAt
               let name = names[iron.LadleId]
               select new LowSource(
                   iron.LadleId, name.Ordinal, name.Number, last.Percent, floors[iron.LadleId], iron.CameAt,
                   doses[treatedLadleId].Where(d => d > known).Select(d => (DateTimeOffset?)d).Min()),
        ];
    }

    /// <summary>The ladles that took iron of a ladle, through whatever ladles.</summary>
    public static async Task<IReadOnlyList<long>> Fed(RecordsContext db, long treatedLadleId, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(db);
        HashSet<long> fed = [treatedLadleId];
        for (List<long> from = [treatedLadleId]; from.Count > 0;)
        {
            var into = await db.InForce<LadleRest>().Where(r => from.Contains(r.TreatedLadleId) && r.IntoLadleId != null && !r.IsWithdrawn)
                .Select(r => r.IntoLadleId!.Value).Distinct().ToListAsync(ct);
            from = [.. into.Where(fed.Add)];
        }

        fed.Remove(treatedLadleId);
        return [.. fed];
    }

    // Iron that went on before other iron came is not what came: two ladles may have been poured into each other.
    private static async Task<List<Came>> Sources(RecordsContext db, long treatedLadleId, CancellationToken ct)
    {
        var all = new List<Came>();
        var seen = new HashSet<long>();
        var last = new List<Came> { new(0, treatedLadleId, DateTimeOffset.MaxValue, DateTimeOffset.MaxValue) };
        while (last.Count > 0)
        {
            var ids = last.Select(c => c.LadleId).Distinct().ToList();
            var rests = await db.InForce<LadleRest>().AsNoTracking().Where(r => r.IntoLadleId != null && ids.Contains(r.IntoLadleId.Value) && !r.IsWithdrawn).ToListAsync(ct);
            last =
            [
                .. from rest in rests
                   from onward in last
                   where onward.LadleId == rest.IntoLadleId && rest.ObservedAt <= onward.LeftAt && rest.TreatedLadleId != treatedLadleId
                   let cameAt = onward.RestId == 0 ? rest.ObservedAt : onward.CameAt
                   orderby cameAt
                   where seen.Add(rest.Id)
                   select new Came(rest.Id, rest.TreatedLadleId, rest.ObservedAt, cameAt),
            ];
            all.AddRange(last);
        }

        return all;
    }
}
