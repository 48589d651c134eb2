using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Ladles;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>Iron that goes back into a furnace: a line of its ledger with the analysis that it brings, the same for every way to enter it.</summary>
internal static class BackIntoFurnace
{
    /// <summary>Writes the line, the furnace's ledger being kept by the caller; what stands against it, otherwise.</summary>
    /// <param name="treatedLadleId">The ladle that it came from; null for other iron.</param>
    /// <param name="analysis">Analysis of other iron.</param>
    public static async Task<Finding?> PourBack(
        this Writing writing, Heat heat, double kg, long? treatedLadleId, Analysis analysis, string? reason, CancellationToken cancellation)
    {
        var db = writing.Db;
        var capacity = await db.Furnaces.Where(f => f.Id == heat.FurnaceId).Select(f => f.CapacityKg).SingleAsync(cancellation);
        if (await db.InFurnace(heat.FurnaceId, cancellation) + kg > capacity) return new Finding("kg", "furnace.capacity", capacity);
        if (treatedLadleId is { } id)
        {
            var treated = await db.TreatedLadles.FindAsync([id], cancellation);
            var tap = await db.InForce<Tap>().AsNoTracking().SingleOrDefaultAsync(t => t.TreatedLadleId == id, cancellation);
            if (treated is null || tap is null) return new Finding("treatedLadleId", "ladle.unknown");
            var mass = await LadleContents.One(db, id, cancellation);
            if (kg > Math.Min(tap.Kg, mass.AtMostKg)) return new Finding("kg", "pourBack.overTap", Math.Max(0, mass.LeftKg));
            analysis = await OfLadle(db, treated, tap, cancellation);
        }

        await writing.Insert(Line(writing.Stamp, heat, kg, treatedLadleId, analysis, reason), cancellation);
        return null;
    }

    /// <summary>The last sample of the ladle, completed by what the chain says; the bath that it was tapped from where it was not treated.</summary>
    private static async Task<Analysis> OfLadle(RecordsContext db, TreatedLadle treated, Tap tap, CancellationToken cancellation)
    {
        var heat = await db.Heats.AsNoTracking().SingleAsync(h => h.Id == treated.HeatId, cancellation);
        var chain = await PouredIron.ThroughChain(db, treated, minutes: 0, cancellation);
        var predicted = chain?.Analysis ?? (await BathNow.Load(db, heat, tap.ObservedAt, cancellation))?.Metal.Analysis ?? Analysis.Empty;
        var sample = await db.InForce<Sample>().AsNoTracking().Include(s => s.Means)
            .Where(s => s.TreatedLadleId == treated.Id && s.Means.Count > 0)
            .OrderByDescending(s => s.ObservedAt).ThenByDescending(s => s.Id).FirstOrDefaultAsync(cancellation);
        if (sample is null) return predicted;
        var sampled = PouredIron.Of(Analysis.Of(sample.Means.Select(m => KeyValuePair.Create(m.Element, m.Percent))), chain);
        return Analysis.Of(sampled.Concat(predicted.Where(p => !sampled.Has(p.Key))));
    }

    private static FurnaceMetal Line(Stamp stamp, Heat heat, double kg, long? treatedLadleId, Analysis analysis, string? reason) => new()
    {
        EntryKey = stamp.EntryKey,
        PersonId = stamp.PersonId,
        ObservedAt = stamp.ObservedAt,
        EnteredAt = stamp.EnteredAt,
        Reason = reason,
        FurnaceId = heat.FurnaceId,
        HeatId = heat.Id,
        Kind = FurnaceMetalKind.PouredBack,
        Kg = kg,
        TreatedLadleId = treatedLadleId,
        Percents = [.. analysis.Select(p => new FurnaceMetalPercent { Element = p.Key, Percent = p.Value })],
    };
}
