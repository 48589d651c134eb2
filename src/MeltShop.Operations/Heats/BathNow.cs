using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>What is in the furnace of a heat now, by the last bath sample that counts.</summary>
/// <param name="Metal">Mass and analysis.</param>
/// <param name="SampleId">The sample that gave the analysis.</param>
/// <param name="SampledAt">When its coin was taken.</param>
public sealed record BathNow(Metal Metal, long SampleId, DateTimeOffset SampledAt)
{
    /// <summary>Reads it; null where no bath sample counts.</summary>
    public static async Task<BathNow?> Load(RecordsContext db, Heat heat, CancellationToken cancellation)
    {
        var sample = await db.Samples.AsNoTracking()
            .Where(s => s.HeatId == heat.Id && (s.Kind == SampleKind.Bath || s.Kind == SampleKind.AfterCorrection) && s.Means.Count > 0)
            .Where(s => !db.Samples.Any(later => later.SupersedesId == s.Id))
            .OrderByDescending(s => s.ObservedAt).ThenByDescending(s => s.Id)
            .Include(s => s.Means)
            .FirstOrDefaultAsync(cancellation);
        if (sample is null) return null;

        var mean = Analysis.Of(sample.Means.Select(m => KeyValuePair.Create(m.Element, m.Percent)));
        var lines = db.FurnaceMetals.AsNoTracking().Where(m => m.FurnaceId == heat.FurnaceId);
        var sampledKg = await lines.Where(m => m.ObservedAt <= sample.ObservedAt).SumAsync(m => m.Kg, cancellation);
        var since = await lines.Where(m => m.ObservedAt > sample.ObservedAt).ToListAsync(cancellation);
        var metal = HeelQuestion.Build(sampledKg, mean, await Changes(db, heat, since, cancellation));
        return new BathNow(metal, sample.Id, sample.ObservedAt);
    }

    // The line of the furnace and the weighing behind it were written by one command and share its entry key.
    private static async Task<List<MetalChange>> Changes(
        RecordsContext db, Heat heat, List<FurnaceMetal> lines, CancellationToken cancellation)
    {
        var keys = lines.Select(l => l.EntryKey).ToList();
        var weighings = await db.Weighings.AsNoTracking()
            .Where(w => w.HeatId == heat.Id && keys.Contains(w.EntryKey))
            .ToDictionaryAsync(w => w.EntryKey, cancellation);
        var changes = new List<MetalChange>();
        foreach (var line in lines)
        {
            var composition = weighings.TryGetValue(line.EntryKey, out var weighing)
                ? await db.CompositionOf(weighing.MaterialId, cancellation)
                : null;
            changes.Add(new MetalChange(line.ObservedAt, line.Kind, line.Kg, composition is null ? null : (composition, weighing!.Kg)));
        }

        return changes;
    }
}
