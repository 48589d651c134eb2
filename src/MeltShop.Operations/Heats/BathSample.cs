using MeltShop.Metallurgy.Elements;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>What a bath sample tells of the bath.</summary>
/// <param name="Measured">What it says; without the carbon that a spark cannot tell.</param>
/// <param name="TellsCarbon">It says the carbon.</param>
/// <param name="IsCombustion">It says carbon and sulphur only: the rest stays what it was.</param>
internal sealed record BathSample(long Id, DateTimeOffset At, Analysis Measured, bool TellsCarbon, bool IsCombustion)
{
    private bool IsWhole => !IsCombustion && TellsCarbon;

    /// <summary>The samples until a time from the last one that says all, in their order; empty where none counts.</summary>
    public static async Task<IReadOnlyList<BathSample>> Load(RecordsContext db, long heatId, DateTimeOffset until, CancellationToken cancellation)
    {
        var rows = await db.InForce<Sample>().AsNoTracking()
            .Where(s => s.HeatId == heatId && (s.Kind == SampleKind.Bath || s.Kind == SampleKind.AfterCorrection) && s.Means.Count > 0)
            .Where(s => s.ObservedAt <= until)
            .OrderByDescending(s => s.ObservedAt).ThenByDescending(s => s.Id)
            .Include(s => s.Means)
            .Take(Facts.Most).ToListAsync(cancellation);
        var used = rows.Select(s => s.InstrumentId).OfType<long>().Distinct().ToList();
        var combustion = used.Count == 0 ? [] : await db.Instruments.Where(i => used.Contains(i.Id) && i.Kind == InstrumentKind.Combustion).Select(i => i.Id).ToListAsync(cancellation);
        var samples = rows.ConvertAll(s => Of(s, s.InstrumentId is { } instrument && combustion.Contains(instrument)));
        var whole = samples.FindIndex(s => s.IsWhole);
        return [.. samples.Take(whole < 0 ? samples.Count : whole + 1).Reverse()];
    }

    /// <summary>The bath once the sample is known.</summary>
    /// <param name="reckoned">What it held by the sample before and by what was charged since.</param>
    public Analysis After(Analysis reckoned)
    {
        if (IsCombustion) return Measured.Aggregate(reckoned, (all, percent) => all.With(percent.Key, percent.Value));
        return !TellsCarbon && reckoned.Has(Element.C) ? Measured.With(Element.C, reckoned.OrZero(Element.C)) : Measured;
    }

    private static BathSample Of(Sample sample, bool isCombustion)
    {
        var isGrey = sample.GreyFracture && !isCombustion;
        var means = sample.Means.Where(m => !isGrey || m.Element != Element.C).Select(m => KeyValuePair.Create(m.Element, m.Percent));
        return new(sample.Id, sample.ObservedAt, Analysis.Of(means), !isGrey && (!isCombustion || sample.Means.Exists(m => m.Element == Element.C)), isCombustion);
    }
}
