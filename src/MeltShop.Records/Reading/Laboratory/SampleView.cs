using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Laboratory;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>A sample with its burns as they were read and the means over those that count.</summary>
/// <param name="Means">In report order.</param>
public sealed record SampleView(
    Origin Origin, long HeatId, long? TreatedLadleId, SampleKind Kind, string? CoinNumber, string? Remarks,
    IReadOnlyList<BurnView> Burns, IReadOnlyList<MeanView> Means)
{
    public long Id => Origin.FactId;

    /// <summary>What it was measured with; null where nobody said.</summary>
    public InstrumentView? Instrument { get; init; }

    /// <inheritdoc cref="Sample.GreyFracture"/>
    public bool GreyFracture { get; init; }

    /// <inheritdoc cref="Sample.IsMeanOnly"/>
    public bool IsMeanOnly { get; init; }

    /// <summary>The coin whose result this is; null where none was sent ahead.</summary>
    public long? CoinOnItsWayId { get; init; }

    /// <summary>Of a cup or a chill wedge, in the order of <see cref="FigureQuantity"/>.</summary>
    public IReadOnlyList<FigureView> Figures { get; init; } = [];

    /// <summary>A spark tells the carbon of iron that froze white: a grey coin holds graphite, and a treated one mostly does. Combustion tells it of any.</summary>
    public bool CarbonIsJudged =>
        Instrument?.Kind == InstrumentKind.Combustion || !(GreyFracture || SampleKinds.Treated.Contains(Kind));

    /// <summary>A figure; null where it was not read.</summary>
    public double? Figure(FigureQuantity quantity) => Figures.FirstOrDefault(f => f.Quantity == quantity)?.Value;

    /// <summary>The means as an analysis: what was not measured is absent.</summary>
    public Analysis Analysis() => Metallurgy.Elements.Analysis.Of(Means.Select(m => KeyValuePair.Create(m.Element, m.Percent)));

    /// <summary>Mean of one element, or null where it was not measured.</summary>
    public double? Mean(Element element) => Means.FirstOrDefault(m => m.Element == element)?.Percent;
}

/// <param name="Ordinal">From 1.</param>
/// <param name="SetAside">Counts for no element, and stays visible.</param>
public sealed record BurnView(int Ordinal, bool SetAside, string? SetAsideReason, IReadOnlyList<ReadingView> Readings);

/// <param name="Percent">With <paramref name="BelowDetection"/> the limit of detection.</param>
/// <param name="InstrumentText">What stood on the screen, letter by letter.</param>
public sealed record ReadingView(Element Element, double Percent, bool BelowDetection, string InstrumentText);

/// <param name="Count">Burns that count.</param>
public sealed record MeanView(Element Element, double Percent, int Count);

/// <inheritdoc cref="SampleFigure"/>
public sealed record FigureView(FigureQuantity Quantity, double Value, string InstrumentText);
