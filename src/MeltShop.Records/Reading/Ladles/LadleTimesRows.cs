using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Ladles;

/// <summary>Reads what the clocks of treated ladles count from: eight statements, however many ladles there are.</summary>
public static class LadleTimesRows
{
    /// <summary>Treatment in the mould: no magnesium fades in the ladle.</summary>
    public const string InMould = "inMould";

    private sealed record Change(long LadleId, DateTimeOffset At, double? MgPercent, double? MgLeastPercent, double? MgMostPercent, double? Minutes, double? LeastMinutes);

    /// <param name="until">By what had been observed until then; null for all.</param>
    public static async Task<IReadOnlyDictionary<long, LadleTimes>> Load(
        RecordsContext db, IReadOnlyCollection<long> ids, DateTimeOffset? until, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(db);
        var known = until ?? DateTimeOffset.MaxValue;
        var ladles = await db.TreatedLadles.AsNoTracking().Where(l => ids.Contains(l.Id)).ToListAsync(ct);
        var cards = Last(await db.InForce<PocketCard>().AsNoTracking().Where(c => ids.Contains(c.TreatedLadleId)).ToListAsync(ct), c => c.TreatedLadleId);
        var taps = Last(await db.InForce<Tap>().AsNoTracking().Where(t => ids.Contains(t.TreatedLadleId)).ToListAsync(ct), t => t.TreatedLadleId);
        var changes = await Changes(db, ids, known, ct);
        changes.AddRange(await LowSamples(db, cards.Values.Where(c => c.MgFloorPercent is not null).ToDictionary(c => c.TreatedLadleId, c => c.MgFloorPercent!.Value), known, ct));
        var inoculations = await Inoculations(db, ids, taps, known, ct);
        var heats = ladles.Select(l => l.HeatId).Distinct().ToList();
        var temperatures = (await db.InForce<TemperatureReading>().AsNoTracking()
                .Where(t => heats.Contains(t.HeatId) && t.TreatedLadleId != null && ids.Contains(t.TreatedLadleId.Value) && t.ObservedAt <= known).ToListAsync(ct))
            .GroupBy(t => t.TreatedLadleId!.Value).ToDictionary(g => g.Key, g => g.MaxBy(t => (t.ObservedAt, t.Id))!);
        return ladles.ToDictionary(l => l.Id, l => Of(
            l, cards.GetValueOrDefault(l.Id), taps.GetValueOrDefault(l.Id), changes.Where(c => c.LadleId == l.Id).MaxBy(c => c.At),
            inoculations.TryGetValue(l.Id, out var at) ? at : null, temperatures.GetValueOrDefault(l.Id)));
    }

    /// <summary>Those of one ladle.</summary>
    public static async Task<LadleTimes> One(RecordsContext db, long id, DateTimeOffset? until, CancellationToken ct) => (await Load(db, [id], until, ct))[id];

    /// <summary>
    /// From its own last inoculation, or from the oldest that came in since with the iron of another ladle: an inoculation does not grow
    /// younger by being poured over. Nothing where only that of the card counts.
    /// </summary>
    private static async Task<Dictionary<long, DateTimeOffset>> Inoculations(
        RecordsContext db, IReadOnlyCollection<long> ids, Dictionary<long, Tap> taps, DateTimeOffset known, CancellationToken ct)
    {
        var own = (await db.InForce<LadleInoculation>().AsNoTracking()
                .Where(i => ids.Contains(i.TreatedLadleId) && !i.IsWithdrawn && i.ObservedAt <= known).Select(i => new { i.TreatedLadleId, i.ObservedAt }).ToListAsync(ct))
            .GroupBy(i => i.TreatedLadleId).ToDictionary(g => g.Key, g => g.Max(i => i.ObservedAt));
        var came = (await db.InForce<LadleRest>().AsNoTracking()
                .Where(r => r.IntoLadleId != null && ids.Contains(r.IntoLadleId.Value) && !r.IsWithdrawn && r.InoculatedAt != null && r.ObservedAt <= known)
                .Select(r => new { LadleId = r.IntoLadleId!.Value, r.ObservedAt, At = r.InoculatedAt!.Value }).ToListAsync(ct)).ToLookup(r => r.LadleId);
        var all = new Dictionary<long, DateTimeOffset>(own);
        foreach (var ladle in came)
        {
            DateTimeOffset? last = own.TryGetValue(ladle.Key, out var at) ? at : null;
            var since = ladle.Where(r => last is null || r.ObservedAt > last).Select(r => r.At).ToList();
            if (since.Count == 0) continue;
            if (last is { } inoculated) since.Add(inoculated);
            else if (taps.GetValueOrDefault(ladle.Key) is { FromTreatedLadleId: null } tap) since.Add(tap.ObservedAt);
            all[ladle.Key] = since.Min();
        }

        return all;
    }

    /// <summary>A sample under the floor says that the magnesium is gone, whatever was predicted; one above it prolongs nothing.</summary>
    private static async Task<IEnumerable<Change>> LowSamples(RecordsContext db, Dictionary<long, double> floors, DateTimeOffset known, CancellationToken ct)
    {
        var ids = floors.Keys.ToList();
        var means = await db.InForce<Sample>().AsNoTracking()
            .Where(s => SampleKinds.Treated.Contains(s.Kind) && s.TreatedLadleId != null && ids.Contains(s.TreatedLadleId.Value) && s.ObservedAt <= known)
            .SelectMany(s => s.Means.Where(m => m.Element == Element.Mg), (s, m) => new { LadleId = s.TreatedLadleId!.Value, s.ObservedAt, m.Percent }).ToListAsync(ct);
        return means.Where(m => m.Percent < floors[m.LadleId]).Select(m => new Change(m.LadleId, m.ObservedAt, m.Percent, null, null, null, null));
    }

    private static async Task<List<Change>> Changes(RecordsContext db, IReadOnlyCollection<long> ids, DateTimeOffset known, CancellationToken ct)
    {
        var doses = await db.InForce<MagnesiumDose>().AsNoTracking().Where(d => ids.Contains(d.TreatedLadleId) && d.ObservedAt <= known).ToListAsync(ct);
        var mixings = await db.InForce<LadleRest>().AsNoTracking()
            .Where(r => r.IntoLadleId != null && ids.Contains(r.IntoLadleId.Value) && !r.IsWithdrawn && r.MixedMgPercent != null && r.ObservedAt <= known)
            .ToListAsync(ct);
        return
        [
            .. doses.Select(d => new Change(d.TreatedLadleId, d.ObservedAt, d.MgPercent, d.MgLeastPercent, d.MgMostPercent, d.MinutesToFloor, d.LeastMinutesToFloor)),
            .. mixings.Select(r => new Change(r.IntoLadleId!.Value, r.ObservedAt, r.MixedMgPercent, r.MixedMgLeastPercent, r.MixedMgMostPercent, r.MinutesToFloor, r.LeastMinutesToFloor)),
        ];
    }

    private static LadleTimes Of(
        TreatedLadle ladle, PocketCard? card, Tap? tap, Change? change, DateTimeOffset? inoculatedAt, TemperatureReading? reading)
    {
        var isGrey = card?.MgFloorPercent is null;
        return new()
        {
            TreatedLadleId = ladle.Id,
            State = ladle.State,
            TappedAt = tap?.ObservedAt,
            TapStartedAt = tap?.StartedAt,
            ReactionEndedAt = ladle.ReactionEndedAt,
            HasMagnesium = !isGrey && card!.Process != InMould,
            MgChangedAt = change?.At,
            MgPercent = change is null ? tap?.MgAfterTreatmentPercent : change.MgPercent,
            MgLeastPercent = change is null ? tap?.MgLeastPercent : change.MgLeastPercent,
            MgMostPercent = change is null ? tap?.MgMostPercent : change.MgMostPercent,
            MgFloorPercent = card?.MgFloorPercent,
            MinutesToFloor = change is null ? tap?.MinutesToFloor : change.Minutes,
            LeastMinutesToFloor = change is null ? tap?.LeastMinutesToFloor : change.LeastMinutes,
            InoculatedAt = inoculatedAt,
            InoculationMinutes = card?.InoculationMinutes,
            HouseMinutes = card?.HouseMinutes,
            LeastPouringC = card?.LeastPouringC,
            HeatLossKPerMinute = card?.HeatLossKPerMinute,
            TemperatureC = reading?.TemperatureC ?? tap?.TemperatureC - (isGrey ? 0 : card?.TreatmentLossK),
            TemperatureAt = reading?.ObservedAt ?? tap?.ObservedAt,
            IsTemperatureMeasured = reading is not null,
        };
    }

    private static Dictionary<long, TFact> Last<TFact>(IEnumerable<TFact> facts, Func<TFact, long> ladle)
        where TFact : Keeping.Fact => facts.GroupBy(ladle).ToDictionary(g => g.Key, g => g.MaxBy(f => f.Id)!);
}
