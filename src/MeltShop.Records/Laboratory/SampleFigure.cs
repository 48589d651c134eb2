namespace MeltShop.Records.Laboratory;

/// <summary>What a sample says beside percents: of a cup, or of a chill wedge.</summary>
public enum FigureQuantity
{
    /// <summary>First arrest of the cooling curve, °C.</summary>
    LiquidusC,

    /// <summary>Lowest temperature before the eutectic rises again, °C.</summary>
    EutecticLowC,

    /// <summary>Highest temperature after that, °C.</summary>
    EutecticHighC,

    /// <summary>Eutectic arrest of a cup that freezes white, °C.</summary>
    WhiteEutecticC,

    /// <summary>Depth of the clear chill of a wedge, mm.</summary>
    ChillMm,
}

/// <summary>One figure as it was read.</summary>
public sealed class SampleFigure
{
    public long Id { get; init; }
    public long SampleId { get; init; }
    public required FigureQuantity Quantity { get; init; }
    public required double Value { get; init; }

    /// <summary>What stood on the screen or in the file, letter by letter.</summary>
    public required string InstrumentText { get; init; }
}
