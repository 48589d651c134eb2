using MeltShop.Records.Keeping;

namespace MeltShop.Records.Ladles;

/// <summary>The mass that really went into the ladle. The alloy in the pocket is what it is: only what follows is computed anew.</summary>
public sealed class Tap : Fact
{
    public required long TreatedLadleId { get; init; }
    public required long HeatId { get; init; }
    public required double Kg { get; init; }
    /// <summary>What the scale showed with the full ladle and with the empty one, kg; null where the mass was typed.</summary>
    public double? GrossKg { get; init; }

    public double? TareKg { get; init; }
    public double? TemperatureC { get; init; }

    /// <summary>
    /// For a ladle, a pouring furnace or a trough that was filled from another ladle and not from a furnace: that ladle. Its
    /// <see cref="Kg"/> is 0: what came is in the <see cref="LadleRest"/> of the other one.
    /// </summary>
    public long? FromTreatedLadleId { get; init; }

    /// <summary>When the tap began; null where nobody said: then its end, which <see cref="Fact.ObservedAt"/> is, stands for it.</summary>
    public DateTimeOffset? StartedAt { get; init; }

    /// <summary>Residual magnesium at minute 0 with the mass really tapped, %, a prediction; null for grey iron.</summary>
    public double? MgAfterTreatmentPercent { get; init; }

    /// <summary>Minute after the end of the reaction at which the magnesium floor is reached; null where it never starts above it.</summary>
    public double? MinutesToFloor { get; init; }

    /// <summary>The least of the band of <see cref="MgAfterTreatmentPercent"/>, %; null where no band is known.</summary>
    public double? MgLeastPercent { get; init; }

    /// <summary>The most of that band, %.</summary>
    public double? MgMostPercent { get; init; }

    /// <summary>Minutes to the floor from the least of the band with the fastest fade; null where it starts under it, or no band is known.</summary>
    public double? LeastMinutesToFloor { get; init; }
}
