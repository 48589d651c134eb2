using MeltShop.Records.Keeping;

namespace MeltShop.Records.Ladles;

/// <summary>
/// Magnesium that was given to iron already in the ladle, on its weighed mass: by wire, plunging or converter, or as a top-up by
/// wire. Never into a pocket.
/// </summary>
public sealed class MagnesiumDose : Fact
{
    public required long TreatedLadleId { get; init; }

    /// <summary>Alloy that was plunged or put into the converter; null for wire.</summary>
    public long? MaterialId { get; init; }

    /// <summary>Alloy, or magnesium of the wire, kg.</summary>
    public required double Kg { get; init; }

    public double? WireMetres { get; init; }
    public double? FeedSeconds { get; init; }

    /// <summary>Residual magnesium afterwards, %, a prediction.</summary>
    public required double MgPercent { get; init; }

    /// <summary>The least of its band, %.</summary>
    public double? MgLeastPercent { get; init; }

    /// <summary>The most of its band, %.</summary>
    public double? MgMostPercent { get; init; }

    /// <summary>Minutes from then until the floor; null where it starts under it.</summary>
    public double? MinutesToFloor { get; init; }

    /// <summary>The same for the least of the band.</summary>
    public double? LeastMinutesToFloor { get; init; }
}
