using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Floor;

/// <summary>The shop floor at a glance.</summary>
public sealed class FloorPage(IDbContextFactory<RecordsContext> contexts)
{
    public async Task<FloorView> Load(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var site = await db.Sites.Select(s => new { s.Name, s.TimeZone }).FirstOrDefaultAsync(ct);
        var furnaces = await FurnaceRows.Load(db, ct);
        var heats = await Heats(db, ct);
        var (open, moreOpen) = await FloorLadles.Open(db, ct);
        var (held, moreHeld) = await FloorLadles.Held(db, ct);
        return new(
            site?.Name, site?.TimeZone,
            [.. furnaces.Select(f => new FloorFurnace(
                f.Id, f.Code, f.Name, f.CapacityKg, f.LiquidKg, f.HeatId is { } heat ? heats.GetValueOrDefault(heat) : null))],
            open, held, moreOpen || moreHeld);
    }

    private static async Task<Dictionary<long, FloorHeat>> Heats(RecordsContext db, CancellationToken ct)
    {
        var heats = await (
            from heat in db.Heats
            join grade in db.Grades on heat.GradeId equals grade.Id
            where FurnaceRows.InTheFurnace.Contains(heat.State)
            select new { heat.Id, heat.Number, GradeCode = grade.Code, heat.State, heat.StartedAt }).ToListAsync(ct);
        var ids = heats.Select(h => h.Id).ToList();
        var temperatures = (await db.InForce<TemperatureReading>().Where(t => ids.Contains(t.HeatId) && t.TreatedLadleId == null)
                .Select(t => new { t.HeatId, t.Id, t.ObservedAt, t.TemperatureC }).ToListAsync(ct))
            .GroupBy(t => t.HeatId).ToDictionary(g => g.Key, g => g.MaxBy(t => (t.ObservedAt, t.Id))!);
        var last = (await db.InForce<Sample>().Where(s => ids.Contains(s.HeatId) && SampleKinds.OfTheBath.Contains(s.Kind)).Select(s => new { s.HeatId, s.Id, s.ObservedAt }).ToListAsync(ct))
            .GroupBy(s => s.HeatId).Select(g => g.MaxBy(s => (s.ObservedAt, s.Id))!.Id).ToList();
        var samples = (await SampleRows.Load(db, db.Samples.Where(s => last.Contains(s.Id)), ct)).ToDictionary(s => s.HeatId);
        var addedTo = await db.InForce<Weighing>().Where(w => ids.Contains(w.HeatId) && w.IntoBath)
            .Select(w => new Instant { Subject = w.HeatId, At = w.ObservedAt }).Latest(ct);
        var corrected = await db.InForce<BathCorrection>().Where(c => ids.Contains(c.HeatId))
            .Select(c => new Instant { Subject = c.HeatId, At = c.ObservedAt }).Latest(ct);
        var steps = (await db.InForce<HeatStep>().Where(s => ids.Contains(s.HeatId)).Select(s => new { s.HeatId, s.State, s.ObservedAt }).ToListAsync(ct))
            .ToLookup(s => s.HeatId, s => new StepTime(s.State, s.ObservedAt));
        return heats.ToDictionary(h => h.Id, h => new FloorHeat(
            h.Id, h.Number, h.GradeCode, h.State, h.StartedAt,
            temperatures.TryGetValue(h.Id, out var t) ? new(t.TemperatureC, t.ObservedAt) : null, samples.GetValueOrDefault(h.Id))
        {
            AddedToAt = addedTo.At(h.Id),
            Steps = [.. steps[h.Id]],
            CorrectedAt = corrected.At(h.Id),
        });
    }
}
