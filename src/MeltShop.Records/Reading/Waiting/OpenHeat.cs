using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Charge;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Waiting;

/// <summary>A heat in a furnace, and the last of each thing that happened to its bath.</summary>
internal sealed record OpenHeat(
    long Id, string Number, string GradeCode, HeatState State, DateTimeOffset StartedAt, DateTimeOffset? Sampled, DateTimeOffset? AddedTo, DateTimeOffset? Corrected)
{
    /// <summary>A bath waits for its addition once a correction was accepted, and for a sample once something went in.</summary>
    public WaitingRow? Waiting => State switch
    {
        HeatState.Charging => Row(WaitingFor.Charging, StartedAt),
        HeatState.Bath when Corrected > (AddedTo ?? DateTimeOffset.MinValue) => Row(WaitingFor.Correction, Corrected.Value),
        HeatState.Bath when Sampled is null || AddedTo > Sampled => Row(WaitingFor.BathSample, AddedTo ?? StartedAt),
        _ => null,
    };

    public static async Task<IReadOnlyList<OpenHeat>> Load(RecordsContext db, CancellationToken ct)
    {
        var heats = await db.Heats.Where(h => FurnaceRows.InTheFurnace.Contains(h.State))
            .Select(h => new { h.Id, h.Number, Grade = db.Grades.Single(g => g.Id == h.GradeId).Code, h.State, h.StartedAt }).ToListAsync(ct);
        var ids = heats.Select(h => h.Id).ToList();
        var sampled = Latest(await db.InForce<Sample>().Where(s => ids.Contains(s.HeatId) && SampleKinds.OfTheBath.Contains(s.Kind))
            .Select(s => new Instant(s.HeatId, s.ObservedAt)).ToListAsync(ct));
        var addedTo = Latest(await db.InForce<Weighing>().Where(w => ids.Contains(w.HeatId) && w.IntoBath)
            .Select(w => new Instant(w.HeatId, w.ObservedAt)).ToListAsync(ct));
        var corrected = Latest(await db.InForce<BathCorrection>().Where(c => ids.Contains(c.HeatId))
            .Select(c => new Instant(c.HeatId, c.ObservedAt)).ToListAsync(ct));
        return [.. heats.Select(h => new OpenHeat(h.Id, h.Number, h.Grade, h.State, h.StartedAt, sampled(h.Id), addedTo(h.Id), corrected(h.Id)))];
    }

    private static Func<long, DateTimeOffset?> Latest(IEnumerable<Instant> instants)
    {
        var latest = instants.GroupBy(i => i.Subject).ToDictionary(g => g.Key, g => g.Max(i => i.ObservedAt));
        return subject => latest.TryGetValue(subject, out var at) ? at : null;
    }

    private WaitingRow Row(WaitingFor what, DateTimeOffset since) => new(what, Id, null, Number, GradeCode, null, since);

    private sealed record Instant(long Subject, DateTimeOffset ObservedAt);
}
