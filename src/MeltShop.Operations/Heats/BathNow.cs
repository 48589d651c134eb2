using MeltShop.Metallurgy.Chain;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>What is in the furnace of a heat, by the bath samples that count.</summary>
/// <param name="Metal">Mass and analysis.</param>
/// <param name="SampleId">The last sample.</param>
/// <param name="SampledAt">When its coin was taken.</param>
public sealed record BathNow(Metal Metal, long SampleId, DateTimeOffset SampledAt)
{
    /// <summary>
    /// False where the last coin froze grey and no combustion spoke since: carbon is then reckoned from the sample before, through the
    /// chain, or else comes of a cup, or is absent and not known. Nothing is added by it.
    /// </summary>
    public bool IsCarbonMeasured { get; init; } = true;

    /// <summary>Reads it as it is now; null where no bath sample counts.</summary>
    public static Task<BathNow?> Load(RecordsContext db, Heat heat, CancellationToken cancellation) => Load(db, heat, null, cancellation);

    /// <summary>Reads it; null where no bath sample counts.</summary>
    /// <param name="at">At that time, by what is in force now; null for the last state.</param>
    public static async Task<BathNow?> Load(RecordsContext db, Heat heat, DateTimeOffset? at, CancellationToken cancellation)
    {
        var until = at ?? DateTimeOffset.MaxValue;
        var samples = await BathSample.Load(db, heat.Id, until, cancellation);
        if (samples.Count == 0) return null;

        var first = samples[0];
        var lines = db.InForce<FurnaceMetal>().AsNoTracking().Where(m => m.FurnaceId == heat.FurnaceId);
        var firstKg = await db.InFurnace(heat.FurnaceId, first.At, cancellation);
        var since = await lines.Include(m => m.Percents).Where(m => m.ObservedAt > first.At && m.ObservedAt <= until).ToListAsync(cancellation);
        var changes = await Changes(db, heat, since, cancellation);

        var (mean, measured) = (first.Measured, first.TellsCarbon);
        foreach (var (before, sample) in samples.Zip(samples.Skip(1)))
        {
            mean = sample.After(HeelQuestion.Build(Kg(before.At), mean, changes.Where(c => c.At > before.At && c.At <= sample.At)).Analysis);
            measured = sample.TellsCarbon || (sample.Kind is not BathSampleKind.Coin && measured);
        }

        var (last, coin) = (samples[^1], samples.Last(s => s.Kind is not BathSampleKind.Cup));
        return new BathNow(HeelQuestion.Build(Kg(last.At), mean, changes.Where(c => c.At > last.At)), coin.Id, coin.At) { IsCarbonMeasured = measured };

        double Kg(DateTimeOffset time) => firstKg + since.Where(m => m.ObservedAt <= time).Sum(m => m.Kg);
    }

    // The line of the furnace and the weighing behind it were written by one command and share its entry key; where the heat was put into
    // another furnace since, the line stands there for one that shares it.
    private static async Task<List<MetalChange>> Changes(
        RecordsContext db, Heat heat, List<FurnaceMetal> lines, CancellationToken cancellation)
    {
        var weighings = await db.Weighings.AsNoTracking().Where(w => w.HeatId == heat.Id).ToDictionaryAsync(w => w.EntryKey, cancellation);
        var changes = new List<MetalChange>();
        foreach (var line in lines)
        {
            var weighing = line.Kind == FurnaceMetalKind.Charged ? await Behind(db, line, weighings, cancellation) : null;
            var composition = weighing is null ? null : await db.CompositionOf(weighing.MaterialId, weighing.Stage, cancellation);
            changes.Add(new MetalChange(
                line.ObservedAt, line.Kind, line.Kg, composition is null ? null : (composition, weighing!.Kg),
                line.Kind == FurnaceMetalKind.PouredBack ? line.Analysis() : null));
        }

        return changes;
    }

    private static async Task<Weighing?> Behind(RecordsContext db, FurnaceMetal line, Dictionary<Guid, Weighing> weighings, CancellationToken cancellation)
    {
        var (weighing, before) = (weighings.GetValueOrDefault(line.EntryKey), line.SupersedesId);
        while (weighing is null && before is { } id)
        {
            var earlier = await db.FurnaceMetals.Where(m => m.Id == id).Select(m => new { m.EntryKey, m.SupersedesId }).SingleAsync(cancellation);
            (weighing, before) = (weighings.GetValueOrDefault(earlier.EntryKey), earlier.SupersedesId);
        }

        return weighing;
    }
}
