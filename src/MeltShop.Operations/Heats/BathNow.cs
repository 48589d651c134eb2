using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>What is in the furnace of a heat, by the last bath sample that counts.</summary>
/// <param name="Metal">Mass and analysis.</param>
/// <param name="SampleId">The sample that gave the analysis.</param>
/// <param name="SampledAt">When its coin was taken.</param>
public sealed record BathNow(Metal Metal, long SampleId, DateTimeOffset SampledAt)
{
    /// <summary>Reads it as it is now; null where no bath sample counts.</summary>
    public static Task<BathNow?> Load(RecordsContext db, Heat heat, CancellationToken cancellation) => Load(db, heat, null, cancellation);

    /// <summary>Reads it; null where no bath sample counts.</summary>
    /// <param name="at">At that time, by what is in force now; null for the last state.</param>
    public static async Task<BathNow?> Load(RecordsContext db, Heat heat, DateTimeOffset? at, CancellationToken cancellation)
    {
        var until = at ?? DateTimeOffset.MaxValue;
        var sample = await db.InForce<Sample>().AsNoTracking()
            .Where(s => s.HeatId == heat.Id && (s.Kind == SampleKind.Bath || s.Kind == SampleKind.AfterCorrection) && s.Means.Count > 0)
            .Where(s => s.ObservedAt <= until)
            .OrderByDescending(s => s.ObservedAt).ThenByDescending(s => s.Id)
            .Include(s => s.Means)
            .FirstOrDefaultAsync(cancellation);
        if (sample is null) return null;

        var mean = Analysis.Of(sample.Means.Select(m => KeyValuePair.Create(m.Element, m.Percent)));
        var lines = db.InForce<FurnaceMetal>().AsNoTracking().Where(m => m.FurnaceId == heat.FurnaceId);
        var sampledKg = await lines.Where(m => m.ObservedAt <= sample.ObservedAt).SumAsync(m => m.Kg, cancellation);
        var since = await lines.Include(m => m.Percents).Where(m => m.ObservedAt > sample.ObservedAt && m.ObservedAt <= until).ToListAsync(cancellation);
        var metal = HeelQuestion.Build(sampledKg, mean, await Changes(db, heat, since, cancellation));
        return new BathNow(metal, sample.Id, sample.ObservedAt);
    }

    // The line of the furnace and the weighing behind it were written by one command and share its entry key.
    private static async Task<List<MetalChange>> Changes(
        RecordsContext db, Heat heat, List<FurnaceMetal> lines, CancellationToken cancellation)
    {
        var keys = lines.Where(l => l.Kind == FurnaceMetalKind.Charged).Select(l => l.EntryKey).ToList();
        var weighings = await db.Weighings.AsNoTracking()
            .Where(w => w.HeatId == heat.Id && keys.Contains(w.EntryKey))
            .ToDictionaryAsync(w => w.EntryKey, cancellation);
        var changes = new List<MetalChange>();
        foreach (var line in lines)
        {
            var weighing = line.Kind == FurnaceMetalKind.Charged ? weighings.GetValueOrDefault(line.EntryKey) : null;
            var composition = weighing is null ? null : await db.CompositionOf(weighing.MaterialId, cancellation);
            changes.Add(new MetalChange(
                line.ObservedAt, line.Kind, line.Kg, composition is null ? null : (composition, weighing!.Kg),
                line.Kind == FurnaceMetalKind.PouredBack ? line.Analysis() : null));
        }

        return changes;
    }
}
