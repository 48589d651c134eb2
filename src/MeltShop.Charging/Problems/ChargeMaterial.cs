using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Charging.Problems;

/// <summary>A material that the optimiser may charge or add, with its price, stock and bounds. Masses are weighed kilograms.</summary>
public sealed record ChargeMaterial
{
    /// <summary>Unique in the problem; the plan answers with it.</summary>
    public required string Code { get; init; }

    /// <summary>Price per 1000 kg weighed; zero or below is allowed (scrap that one is paid to take).</summary>
    public required double PricePerTonne { get; init; }

    /// <summary>Analysis, metallic yield and recoveries.</summary>
    public required MaterialComposition Composition { get; init; }

    /// <summary>Standard deviation of a percent of the analysis, percentage points, 0 or more; 0 where not named.</summary>
    public IReadOnlyDictionary<Element, double> SpreadPercent { get; init; } = new Dictionary<Element, double>();

    /// <summary>Stock, kg; null where unlimited.</summary>
    public double? AvailableKg { get; init; }

    /// <summary>Least mass, kg: compulsory, not "if used".</summary>
    public double MinKg { get; init; }

    /// <summary>Greatest mass, kg; null where unlimited.</summary>
    public double? MaxKg { get; init; }

    /// <summary>Least share of the total weighed mass, 0 to 100 %.</summary>
    public double MinPercent { get; init; }

    /// <summary>Greatest share of the total weighed mass, 0 to 100 %.</summary>
    public double MaxPercent { get; init; } = 100;

    /// <summary>Mass of one piece or lot, kg: only whole multiples are charged; null where it can be weighed to any mass.</summary>
    public double? PieceKg { get; init; }

    /// <summary>
    /// Heat to bring 1000 kg from the yard into solution at bath temperature, kWh/t, negative where it gives heat; null where it
    /// is to be taken from the line for cold iron and steel. Used by corrections only.
    /// </summary>
    public double? HeatKWhPerTonne { get; init; }
}
