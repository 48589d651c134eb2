using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Laboratory;

namespace MeltShop.Operations.Laboratory;

public enum CarbonSource
{
    /// <summary>A piece burnt in oxygen.</summary>
    Combustion,

    /// <summary>A cup that froze white: carbon from its two arrests.</summary>
    WhiteCup,

    /// <summary>A cup's liquidus with the silicon and phosphorus of a coin.</summary>
    CupLiquidus,

    /// <summary>The last coin of the furnace that froze white, from which the chain reckons on.</summary>
    FurnaceSample,
}

/// <summary>Where the carbon comes from that a coin cannot tell.</summary>
/// <param name="Percent">Mass percent of the iron that was sampled there.</param>
/// <param name="Sample">What says it.</param>
public sealed record CarbonElsewhere(CarbonSource Source, double Percent, SampleView Sample)
{
    /// <summary>Every source that there is, the surest first, of each the last; empty where there is none.</summary>
    /// <param name="sample">The coin whose carbon is not judged.</param>
    /// <param name="all">All samples of its heat.</param>
    public static IReadOnlyList<CarbonElsewhere> Of(SampleView sample, IReadOnlyList<SampleView> all)
    {
        ArgumentNullException.ThrowIfNull(sample);
        ArgumentNullException.ThrowIfNull(all);
        var standing = all.Where(s => !s.Origin.IsCorrected && s.Id != sample.Id).OrderByDescending(s => s.Origin.ObservedAt).ToList();
        return
        [
            .. Last(CarbonSource.Combustion, s => s.Instrument?.Kind == InstrumentKind.Combustion ? s.Mean(Element.C) : null),
            .. Last(CarbonSource.WhiteCup, s => CupCarbon.White(s.Figure(FigureQuantity.WhiteEutecticC), s.Figure(FigureQuantity.LiquidusC))),
            .. Last(CarbonSource.CupLiquidus, s => CupCarbon.FromLiquidus(s.Figure(FigureQuantity.LiquidusC), sample.Analysis())),
            .. Last(CarbonSource.FurnaceSample, s => SampleKinds.OfTheBath.Contains(s.Kind) && s.CarbonIsJudged && s.Instrument?.Kind != InstrumentKind.Combustion ? s.Mean(Element.C) : null),
        ];

        IEnumerable<CarbonElsewhere> Last(CarbonSource source, Func<SampleView, double?> carbon) =>
            standing.Where(s => carbon(s) is not null).Take(1).Select(s => new CarbonElsewhere(source, carbon(s)!.Value, s));
    }

    /// <summary>False where nothing tells the carbon of the bath: no coin that froze white, no combustion, no cup.</summary>
    /// <param name="all">All samples of the heat.</param>
    public static bool IsKnownInFurnace(IReadOnlyList<SampleView> all)
    {
        var furnace = all.Where(s => s.TreatedLadleId is null).ToList();
        var last = furnace.Where(s => !s.Origin.IsCorrected && SampleKinds.OfTheBath.Contains(s.Kind)).MaxBy(s => (s.Origin.ObservedAt, s.Id));
        return last is not null && ((last.CarbonIsJudged && last.Mean(Element.C) is not null) || Of(last, furnace).Count > 0);
    }
}
