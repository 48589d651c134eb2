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
    /// Least mass that is worth weighing, kg, above 0: the material is left out or comes with at least this, where any plan can be like
    /// that; null where any mass will do. Used by corrections only.
    /// </summary>
    public double? LeastIfUsedKg { get; init; }

    /// <summary>
    /// Heat to bring 1000 kg from the yard into solution at bath temperature, kWh/t, negative where it gives heat; null where it
    /// is to be taken from the line for cold iron and steel. Used by corrections only.
    /// </summary>
    public double? HeatKWhPerTonne { get; init; }

    /// <summary>Bulk density as it lies in the bucket, t/m³, above 0; null where not known. Used by volume limits only.</summary>
    public double? BulkDensityTonnesPerM3 { get; init; }

    /// <summary>Dirt and rust that become slag, percent of the weighed mass, 0 to 100; costs what the problem says slag costs.</summary>
    public double SlagPercent { get; init; }

    /// <summary>Energy to melt 1000 kg weighed, kWh/t, 0 or more; costs what the problem says energy costs.</summary>
    public double MeltingKWhPerTonne { get; init; }

    /// <summary>
    /// How much dearer than its price a material may make the charge so that it is used up, per 1000 kg weighed (returns that pile up); no
    /// money that anyone earns and no part of the plan's cost.
    /// </summary>
    public double UseUpBonusPerTonne { get; init; }
}
