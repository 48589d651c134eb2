using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Floor;

/// <summary>Reads the ladles that the floor shows, with their clocks: as many statements however many there are.</summary>
internal static class FloorLadles
{
    public const int Most = 50;

    private static readonly IReadOnlyList<TreatedLadleState> Running =
        [TreatedLadleState.Prepared, TreatedLadleState.Tapped, TreatedLadleState.Pouring];

    public static Task<(IReadOnlyList<FloorLadle> Ladles, bool More)> Open(RecordsContext db, CancellationToken ct) =>
        Load(db, db.TreatedLadles.Where(l => Running.Contains(l.State)).OrderBy(l => l.Id), ct);

    public static Task<(IReadOnlyList<FloorLadle> Ladles, bool More)> Held(RecordsContext db, CancellationToken ct) =>
        Load(db, db.TreatedLadles.Where(l => l.State == TreatedLadleState.Held).OrderByDescending(l => l.Id), ct);

    private static async Task<(IReadOnlyList<FloorLadle> Ladles, bool More)> Load(
        RecordsContext db, IOrderedQueryable<TreatedLadle> which, CancellationToken ct)
    {
        var rows = await which.Take(Most + 1).Select(l => new
        {
            l.Id, l.HeatId, l.Ordinal, l.State, l.ReactionEndedAt,
            Ladle = db.Ladles.Single(x => x.Id == l.LadleId).Name,
            HeatNumber = db.Heats.Single(h => h.Id == l.HeatId).Number,
            HeatStartedAt = db.Heats.Single(h => h.Id == l.HeatId).StartedAt,
            Grade = db.Grades.Single(g => g.Id == db.Heats.Single(h => h.Id == l.HeatId).GradeId).Code,
        }).ToListAsync(ct);
        var ids = rows.Select(r => r.Id).ToList();
        var taps = (await db.InForce<Tap>().AsNoTracking().Where(t => ids.Contains(t.TreatedLadleId)).ToListAsync(ct))
            .GroupBy(t => t.TreatedLadleId).ToDictionary(g => g.Key, g => g.MaxBy(t => t.Id)!);
        var times = await Reading.Ladles.LadleTimesRows.Load(db, ids, null, ct);
        var late = await db.InForce<PouredMould>().Where(m => ids.Contains(m.TreatedLadleId) && !m.IsWithdrawn && m.LateFor != null)
            .GroupBy(m => m.TreatedLadleId).Select(g => new { g.Key, Count = g.Count() }).ToDictionaryAsync(g => g.Key, g => g.Count, ct);
        var came = await db.InForce<LadleRest>().Where(r => r.IntoLadleId != null && ids.Contains(r.IntoLadleId.Value) && !r.IsWithdrawn)
            .GroupBy(r => r.IntoLadleId!.Value).Select(g => new { g.Key, Kg = g.Sum(r => r.Kg) }).ToDictionaryAsync(g => g.Key, g => g.Kg, ct);
        var contents = await Reading.Ladles.LadleContents.Load(db, [.. rows.Where(r => Running.Contains(r.State)).Select(r => r.Id)], ct);
        var steps = await db.LadleSteps.Where(s => ids.Contains(s.TreatedLadleId)).Select(s => new Instant { Subject = s.TreatedLadleId, At = s.ObservedAt }).Latest(ct);
        var sampled = await db.InForce<Sample>().Where(s => s.TreatedLadleId != null && ids.Contains(s.TreatedLadleId.Value) && s.Kind == SampleKind.LastMetal)
            .Select(s => new Instant { Subject = s.TreatedLadleId!.Value, At = s.ObservedAt }).Latest(ct);
        var ladles = rows.Take(Most).Select(r =>
        {
            var tap = taps.GetValueOrDefault(r.Id);
            return new FloorLadle(
                r.Id, r.HeatId, r.HeatNumber, r.Ordinal, r.Ladle, r.Grade, r.State, r.ReactionEndedAt, tap is null ? null : tap.Kg + came.GetValueOrDefault(r.Id), tap?.MgAfterTreatmentPercent,
                tap?.MinutesToFloor)
            {
                Since = steps.At(r.Id) ?? r.HeatStartedAt,
                LastMetalAt = sampled.At(r.Id),
                Times = times[r.Id],
                Content = contents.GetValueOrDefault(r.Id),
                LateMoulds = late.GetValueOrDefault(r.Id),
            };
        });
        return ([.. ladles], rows.Count > Most);
    }
}
