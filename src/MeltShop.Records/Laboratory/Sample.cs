using MeltShop.Records.Keeping;

namespace MeltShop.Records.Laboratory;

public enum SampleKind
{
    Bath,
    AfterCorrection,
    LadleBase,
    AfterTreatment,

    /// <summary>From the last metal of a treated ladle: the one that speaks for the castings.</summary>
    LastMetal,

    /// <summary>The cooling curve of a cup: liquidus and arrests, in two minutes.</summary>
    Cup,

    /// <summary>The chill of a wedge, in two minutes.</summary>
    ChillWedge,
}

public static class SampleKinds
{
    /// <summary>Taken from the furnace: they say what the bath is, and samples of a ladle do not.</summary>
    public static IReadOnlyList<SampleKind> OfTheBath { get; } = [SampleKind.Bath, SampleKind.AfterCorrection];

    /// <summary>Iron after the treatment: a coin of it often freezes grey, so a spark does not tell its carbon, and the poured window speaks for it.</summary>
    public static IReadOnlyList<SampleKind> Treated { get; } = [SampleKind.AfterTreatment, SampleKind.LastMetal];

    /// <summary>They bring figures instead of burns.</summary>
    public static IReadOnlyList<SampleKind> OfFigures { get; } = [SampleKind.Cup, SampleKind.ChillWedge];
}

/// <summary>A coin from the bath or a ladle with its burns. Observed-at is when it was taken.</summary>
public sealed class Sample : Fact
{
    public required long HeatId { get; init; }
    public long? TreatedLadleId { get; init; }
    public required SampleKind Kind { get; init; }
    public string? CoinNumber { get; init; }
    public string? Remarks { get; init; }

    /// <summary>What it was measured with; null where nobody said.</summary>
    public long? InstrumentId { get; init; }

    /// <summary>The coin broke grey: its carbon by spark is not judged.</summary>
    public bool GreyFracture { get; init; }

    /// <summary>The instrument sent the mean of its burns: the one burn below is that mean.</summary>
    public bool IsMeanOnly { get; init; }

    /// <summary>The coin whose result this is, where it had been sent ahead.</summary>
    public long? CoinOnItsWayId { get; init; }

    public List<SampleFigure> Figures { get; init; } = [];
    public List<Burn> Burns { get; init; } = [];
    public List<SampleMean> Means { get; init; } = [];
}
