using MeltShop.Records.Keeping;

namespace MeltShop.Records.Sites;

/// <summary>The figures of a ladle or a treatment station, with their units.</summary>
public enum LadleFigureKind
{
    /// <summary>Iron to the brim, kg.</summary>
    Capacity,

    /// <summary>Greatest mass that leaves the freeboard, kg.</summary>
    FillLimit,

    /// <summary>Alloy and cover that the pocket holds, kg.</summary>
    Pocket,

    /// <summary>Inner height over diameter.</summary>
    HeightToDiameter,

    /// <summary>Magnesium recovery with the sulphur credited, %.</summary>
    MgRecovery,

    /// <summary>Loss of magnesium, percentage points a minute.</summary>
    MgFade,

    /// <summary>Loss of temperature while it stands, K a minute.</summary>
    HeatLoss,

    /// <summary>Loss of temperature by tap and treatment, K.</summary>
    TreatmentLoss,

    /// <summary>Least pouring temperature, °C.</summary>
    LeastPouring,

    /// <summary>Most treatment temperature, °C.</summary>
    MostTreatment,

    /// <summary>Minutes that an inoculation may be old.</summary>
    InoculationMinutes,

    /// <summary>Minutes that the house allows from the end of the reaction.</summary>
    HouseMinutes,

    /// <summary>Magnesium of the wire, g a metre.</summary>
    WireMagnesium,

    /// <summary>Speed of the wire feeder, metres a minute.</summary>
    WireSpeed,
}

/// <summary>How sure a figure is.</summary>
public enum FigureStanding
{
    /// <summary>From a published range.</summary>
    Published,

    /// <summary>The shop's own entry.</summary>
    Shop,

    /// <summary>Learnt from the shop's own heats.</summary>
    Learnt,

    /// <summary>Remembered, or assumed for want of better.</summary>
    Assumed,
}

/// <summary>A figure of a ladle as it was said, with its band and where it comes from. The ladle's row holds the last.</summary>
public sealed class LadleFigure : Fact
{
    public required long LadleId { get; init; }
    public required LadleFigureKind Kind { get; init; }
    public required double Value { get; init; }

    /// <summary>Least that it may be; null where nobody said.</summary>
    public double? Least { get; init; }

    /// <summary>Most that it may be.</summary>
    public double? Most { get; init; }

    public required FigureStanding Standing { get; init; }
    public required string Source { get; init; }
}
