using MeltShop.Metallurgy;
using MeltShop.Operations.Heats;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>What stands against a heat having been of that grade, in that furnace, from then to then.</summary>
internal static class HeatPlace
{
    /// <returns>What makes no sense, at its field; null where nothing stands against it.</returns>
    public static async Task<Finding?> Against(RecordsContext db, Heat heat, HeatSaid said, bool isTapped, CancellationToken cancellation) =>
        await OfGrade(db, heat, said, isTapped, cancellation) ?? await OfTimes(db, heat, said, cancellation) ?? await OfFurnace(db, heat, said, cancellation);

    private static async Task<Finding?> OfGrade(RecordsContext db, Heat heat, HeatSaid said, bool isTapped, CancellationToken cancellation)
    {
        var families = await db.Grades.Where(g => g.Id == said.GradeId || g.Id == heat.GradeId).ToDictionaryAsync(g => g.Id, g => g.Family, cancellation);
        if (!families.TryGetValue(said.GradeId, out var family)) return new("gradeId", "grade.unknown");
        return family != families[heat.GradeId] && isTapped ? new("gradeId", "grade.otherRoute") : null;
    }

    private static async Task<Finding?> OfTimes(RecordsContext db, Heat heat, HeatSaid said, CancellationToken cancellation)
    {
        if (said.ClosedAt is { } end && heat.ClosedAt is null) return new("closedAt", "state.wrong", heat.State.ToString());
        if (said.ClosedAt < said.StartedAt)
        {
            return said.StartedAt == heat.StartedAt ? new("closedAt", "heat.startedAfter", said.StartedAt) : new("startedAt", "heat.endedBefore", said.ClosedAt);
        }

        var metal = db.InForce<FurnaceMetal>().Where(m => m.HeatId == heat.Id);
        if (said.StartedAt != heat.StartedAt && await metal.Select(m => (DateTimeOffset?)m.ObservedAt).MinAsync(cancellation) is { } first && first < said.StartedAt)
            return new("startedAt", "heat.metalBefore", first);
        if (said.ClosedAt is not { } closedAt || closedAt == heat.ClosedAt) return null;
        var ofTheEnd = (await db.OfTheEnd(heat, cancellation)).Select(m => m.Id).ToList();
        var last = await metal.Where(m => !ofTheEnd.Contains(m.Id)).Select(m => (DateTimeOffset?)m.ObservedAt).MaxAsync(cancellation);
        if (last > closedAt) return new("closedAt", "heat.metalAfter", last);
        var sampled = await db.InForce<Sample>().Where(s => s.HeatId == heat.Id && SampleKinds.OfTheBath.Contains(s.Kind)).Select(s => (DateTimeOffset?)s.ObservedAt).MaxAsync(cancellation);
        return sampled > closedAt ? new("closedAt", "heat.sampleAfter", sampled) : null;
    }

    private static async Task<Finding?> OfFurnace(RecordsContext db, Heat heat, HeatSaid said, CancellationToken cancellation)
    {
        if (said with { GradeId = heat.GradeId, HeelKg = heat.HeelKg } == HeatSaid.Of(heat)) return null;
        if (await db.Furnaces.AsNoTracking().SingleOrDefaultAsync(f => f.Id == said.FurnaceId, cancellation) is not { } furnace) return new("furnaceId", "furnace.unknown");
        var end = said.ClosedAt ?? DateTimeOffset.MaxValue;
        var other = await db.HeatsInAFurnace().Where(h => h.FurnaceId == said.FurnaceId && h.Id != heat.Id && h.StartedAt < end && (h.ClosedAt == null || h.ClosedAt > said.StartedAt))
            .OrderBy(h => h.StartedAt).Select(h => h.Number).FirstOrDefaultAsync(cancellation);
        if (other is null) return said.FurnaceId != heat.FurnaceId && await Most(db, heat, said, cancellation) > furnace.CapacityKg * (1 + FurnaceLedger.Uncertainty) ? new("furnaceId", "furnace.capacity", furnace.CapacityKg) : null;
        return new(said.FurnaceId != heat.FurnaceId ? "furnaceId" : said.ClosedAt != heat.ClosedAt ? "closedAt" : "startedAt", "furnace.taken", other);
    }

    /// <summary>The most that would ever have been in the other furnace, kg.</summary>
    private static async Task<double> Most(RecordsContext db, Heat heat, HeatSaid said, CancellationToken cancellation)
    {
        var kg = await db.InFurnace(said.FurnaceId, said.StartedAt, cancellation);
        var most = kg;
        foreach (var line in await db.InForce<FurnaceMetal>().AsNoTracking().Where(m => m.HeatId == heat.Id).OrderBy(m => m.ObservedAt).ThenBy(m => m.Id).ToListAsync(cancellation))
        {
            kg = line.LevelKg ?? kg + line.Kg;
            most = Math.Max(most, kg);
        }

        return most;
    }
}
