using MeltShop.Metallurgy.Chain;

namespace MeltShop.Charging.Problems;

/// <summary>The question "what is the cheapest furnace charge that meets these limits?".</summary>
public sealed record ChargeProblem
{
    /// <summary>Liquid mass wanted, heel included, kg.</summary>
    public required double MeltKg { get; init; }

    /// <summary>How much more liquid is acceptable, kg.</summary>
    public double MeltToleranceKg { get; init; }

    /// <summary>
    /// All that the furnace holds, kg: where the limits cannot be kept, a charge that does the least harm never goes beyond it, and where what is weighed in
    /// already does, nothing more goes in. Null where nobody said.
    /// </summary>
    public double? CapacityKg { get; init; }

    /// <summary>What is already in the furnace; <see cref="Metal.None"/> where it is empty.</summary>
    public Metal Heel { get; init; } = Metal.None;

    /// <summary>What may be charged.</summary>
    public required IReadOnlyList<ChargeMaterial> Materials { get; init; }

    /// <summary>What the melt has to meet.</summary>
    public required IReadOnlyList<QuantityLimit> Limits { get; init; }

    /// <summary>
    /// One-sided confidence at which each bound holds given the scatter of the analyses, 50 (the mean alone) to below 100 %.
    /// </summary>
    public double ConfidencePercent { get; init; } = 50;

    /// <summary>Bounds on several materials together.</summary>
    public IReadOnlyList<GroupLimit> Groups { get; init; } = [];

    /// <summary>Room for the cold charge.</summary>
    public IReadOnlyList<VolumeLimit> Volumes { get; init; } = [];

    /// <summary>
    /// Kilograms by code that are weighed in already and cannot be taken out again. Stock, masses and shares of the materials are those of the
    /// whole charge, what is weighed in included; where it is over a stock or a greatest mass already, it stands.
    /// </summary>
    public IReadOnlyDictionary<string, double> WeighedKg { get; init; } = new Dictionary<string, double>();

    /// <summary>Cost of 1000 kg of slag: flux, lining, energy, disposal.</summary>
    public double SlagCostPerTonne { get; init; }

    /// <summary>Price of a kilowatt-hour at the furnace.</summary>
    public double EnergyPricePerKWh { get; init; }
}
