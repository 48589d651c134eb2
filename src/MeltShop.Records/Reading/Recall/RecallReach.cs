using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Recall;

/// <summary>How far suspect iron went: from heats into their ladles and heels, from ladles into other ladles and back into furnaces.</summary>
internal sealed class RecallReach(RecordsContext db, int heels)
{
    /// <param name="ThroughHeat">The heat that it came through last; null where it came through a ladle, or through nothing.</param>
    public sealed record Reached(DateTimeOffset From, RecallWay Way, long? ThroughHeat, long? ThroughLadle, int Heels, bool IsSure);

    private readonly List<long> newHeats = [];
    private readonly List<long> newLadles = [];

    public Dictionary<long, Reached> Heats { get; } = [];

    public Dictionary<long, Reached> Ladles { get; } = [];

    public async Task Follow(IEnumerable<RecallStart> starts, CancellationToken ct)
    {
        foreach (var start in starts)
        {
            var reached = new Reached(start.From ?? DateTimeOffset.MinValue, RecallWay.Itself, null, null, 0, start.IsSure);
            if (start.HeatId is { } heat) Add(Heats, newHeats, heat, reached);
            if (start.TreatedLadleId is { } ladle) Add(Ladles, newLadles, ladle, reached);
        }

        while (newHeats.Count + newLadles.Count > 0)
        {
            await Of(Take(newHeats), ct);
            await OfLadles(Take(newLadles), ct);
        }
    }

    private async Task Of(List<long> heats, CancellationToken ct)
    {
        var taps = await db.InForce<Tap>().AsNoTracking().Where(t => heats.Contains(t.HeatId)).Select(t => new { t.TreatedLadleId, t.HeatId, t.ObservedAt }).ToListAsync(ct);
        foreach (var tap in taps.Where(t => t.ObservedAt >= Heats[t.HeatId].From)) Add(Ladles, newLadles, tap.TreatedLadleId, Heats[tap.HeatId]);
        foreach (var id in heats.Where(id => Heats[id].Heels < heels))
        {
            var heat = await db.Heats.AsNoTracking().SingleAsync(h => h.Id == id, ct);
            var next = await db.Heats.AsNoTracking().Where(h => h.FurnaceId == heat.FurnaceId && h.StartedAt > heat.StartedAt)
                .OrderBy(h => h.StartedAt).Select(h => new { h.Id, h.HeelKg }).FirstOrDefaultAsync(ct);
            if (next is { HeelKg: > 0 }) Add(Heats, newHeats, next.Id, new(DateTimeOffset.MinValue, RecallWay.Heel, id, null, Heats[id].Heels + 1, Heats[id].IsSure));
        }
    }

    private async Task OfLadles(List<long> ladles, CancellationToken ct)
    {
        var rests = await db.InForce<LadleRest>().AsNoTracking().Where(r => ladles.Contains(r.TreatedLadleId) && r.IntoLadleId != null && !r.IsWithdrawn).ToListAsync(ct);
        foreach (var rest in rests)
        {
            var from = Ladles[rest.TreatedLadleId];
            Add(Ladles, newLadles, rest.IntoLadleId!.Value, new(rest.ObservedAt, RecallWay.FromLadle, null, rest.TreatedLadleId, from.Heels, from.IsSure));
        }

        var back = await db.InForce<FurnaceMetal>().AsNoTracking()
            .Where(m => m.Kind == FurnaceMetalKind.PouredBack && m.HeatId != null && m.TreatedLadleId != null && ladles.Contains(m.TreatedLadleId.Value)).ToListAsync(ct);
        foreach (var metal in back)
        {
            var from = Ladles[metal.TreatedLadleId!.Value];
            Add(Heats, newHeats, metal.HeatId!.Value, new(metal.ObservedAt, RecallWay.PouredBack, null, metal.TreatedLadleId, from.Heels, from.IsSure));
        }
    }

    // Sooner, nearer or surer iron is followed once more; each can only get better, so it ends.
    private static void Add(Dictionary<long, Reached> all, List<long> news, long id, Reached reached)
    {
        if (all.TryGetValue(id, out var known) && known.From <= reached.From && known.Heels <= reached.Heels && (known.IsSure || !reached.IsSure)) return;
        all[id] = known is null ? reached : known with
        {
            From = known.From < reached.From ? known.From : reached.From,
            Heels = Math.Min(known.Heels, reached.Heels),
            IsSure = known.IsSure || reached.IsSure,
        };
        news.Add(id);
    }

    private static List<long> Take(List<long> news)
    {
        List<long> taken = [.. news.Distinct()];
        news.Clear();
        return taken;
    }
}
