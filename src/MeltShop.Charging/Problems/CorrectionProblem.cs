using MeltShop.Metallurgy.Chain;

namespace MeltShop.Charging.Problems;

/// <summary>The question "what is the cheapest addition that brings this bath into its limits?".</summary>
public sealed record CorrectionProblem
{
    /// <summary>The bath as sampled, before anything is tapped off.</summary>
    public required Metal Bath { get; init; }

    /// <summary>Temperature of the bath, °C.</summary>
    public required double TemperatureC { get; init; }

    /// <summary>What may be added; shares are of the total of the additions.</summary>
    public required IReadOnlyList<ChargeMaterial> Additions { get; init; }

    /// <summary>What the bath has to meet afterwards; each limit's margin moves its bounds inward.</summary>
    public required IReadOnlyList<QuantityLimit> Limits { get; init; }

    /// <summary>Greatest total weighed mass of the additions, kg; null where unlimited.</summary>
    public double? MaxAdditionKg { get; init; }

    /// <summary>Greatest liquid mass afterwards, kg; null where unlimited.</summary>
    public double? CapacityKg { get; init; }

    /// <summary>Greatest mass that may be tapped off first, kg; a thousandth of the bath stays in any case.</summary>
    public double MaxTapOffKg { get; init; }

    /// <summary>Cost of tapping off 1000 kg; above zero where <see cref="MaxTapOffKg"/> is.</summary>
    public double? TapOffCostPerTonne { get; init; }
}
