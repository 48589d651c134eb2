using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>How much of the bath a sample tells.</summary>
internal enum BathSampleKind
{
    /// <summary>All that it measured; of what it did not measure nothing is known.</summary>
    Coin,

    /// <summary>Carbon and sulphur: the rest stays what it was.</summary>
    Combustion,

    /// <summary>Carbon, where nothing else told it.</summary>
    Cup,
}

/// <summary>What a bath sample tells of the bath.</summary>
/// <param name="Measured">What it says; without the carbon that a spark cannot tell.</param>
/// <param name="TellsCarbon">It says the carbon as a measured one; a cup does not.</param>
internal sealed record BathSample(long Id, DateTimeOffset At, Analysis Measured, bool TellsCarbon, BathSampleKind Kind)
{
    private bool IsWhole => Kind is BathSampleKind.Coin && TellsCarbon;

    /// <summary>The samples until a time from the last one that says all, in their order; empty where none counts. A cup alone does not.</summary>
    public static async Task<IReadOnlyList<BathSample>> Load(RecordsContext db, long heatId, DateTimeOffset until, CancellationToken cancellation)
    {
        var rows = await db.InForce<Sample>().AsNoTracking()
            .Where(s => s.HeatId == heatId && (((s.Kind == SampleKind.Bath || s.Kind == SampleKind.AfterCorrection) && s.Means.Count > 0)
                || (s.Kind == SampleKind.Cup && s.TreatedLadleId == null)))
            .Where(s => s.ObservedAt <= until)
            .OrderByDescending(s => s.ObservedAt).ThenByDescending(s => s.Id)
            .Include(s => s.Means).Include(s => s.Figures)
            .Take(Facts.Most).ToListAsync(cancellation);
        var used = rows.Select(s => s.InstrumentId).OfType<long>().Distinct().ToList();
        var combustion = used.Count == 0 ? [] : await db.Instruments.Where(i => used.Contains(i.Id) && i.Kind == InstrumentKind.Combustion).Select(i => i.Id).ToListAsync(cancellation);
        var coins = rows.FindAll(s => s.Kind != SampleKind.Cup).ConvertAll(s => Of(s, s.InstrumentId is { } instrument && combustion.Contains(instrument)));
        var whole = coins.FindIndex(s => s.IsWhole);
        if (whole < 0) coins.AddRange(rows.FindAll(s => s.Kind == SampleKind.Cup).Select(s => Cup(s, coins)).OfType<BathSample>().ToList());
        return coins.TrueForAll(s => s.Kind is BathSampleKind.Cup) ? []
            : [.. coins.Take(whole < 0 ? coins.Count : whole + 1).OrderBy(s => s.At).ThenBy(s => s.Id)];
    }

    /// <summary>The bath once the sample is known.</summary>
    /// <param name="reckoned">What it held by the sample before and by what was charged since.</param>
    public Analysis After(Analysis reckoned) => Kind switch
    {
        BathSampleKind.Combustion => Measured.Aggregate(reckoned, (all, percent) => all.With(percent.Key, percent.Value)),
        BathSampleKind.Cup => reckoned.Has(Element.C) ? reckoned : reckoned.With(Element.C, Measured.OrZero(Element.C)),
        _ => !TellsCarbon && reckoned.Has(Element.C) ? Measured.With(Element.C, reckoned.OrZero(Element.C)) : Measured,
    };

    private static BathSample Of(Sample sample, bool isCombustion)
    {
        var isGrey = sample.GreyFracture && !isCombustion;
        var means = sample.Means.Where(m => !isGrey || m.Element != Element.C).Select(m => KeyValuePair.Create(m.Element, m.Percent));
        return new(
            sample.Id, sample.ObservedAt, Analysis.Of(means), !isGrey && (!isCombustion || sample.Means.Exists(m => m.Element == Element.C)),
            isCombustion ? BathSampleKind.Combustion : BathSampleKind.Coin);
    }

    /// <summary>Its two arrests, or its liquidus with the silicon and phosphorus of the coin that was taken nearest to it.</summary>
    private static BathSample? Cup(Sample cup, List<BathSample> coins)
    {
        var coin = coins.Where(c => c.Kind is BathSampleKind.Coin).MinBy(c => (c.At - cup.ObservedAt).Duration())?.Measured ?? Analysis.Empty;
        var carbon = CupCarbon.White(Figure(FigureQuantity.WhiteEutecticC), Figure(FigureQuantity.LiquidusC)) ?? CupCarbon.FromLiquidus(Figure(FigureQuantity.LiquidusC), coin);
        return carbon is { } percent ? new(cup.Id, cup.ObservedAt, Analysis.Empty.With(Element.C, percent), false, BathSampleKind.Cup) : null;

        double? Figure(FigureQuantity quantity) => cup.Figures.Find(f => f.Quantity == quantity)?.Value;
    }
}
