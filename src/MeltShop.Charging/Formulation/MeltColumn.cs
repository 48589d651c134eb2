using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Charging.Formulation;

/// <summary>Something that changes the melt by kilograms: a material that goes in, or metal that is tapped off.</summary>
internal sealed class MeltColumn
{
    private readonly Func<Element, double> elementKg;
    private List<(Element Element, double Deviation)>? deviations;

    private MeltColumn(Func<Element, double> elementKg) => this.elementKg = elementKg;

    public required string Name { get; init; }

    /// <summary>What a kilogram costs: its price, its slag, its melting.</summary>
    public required double CostPerKg { get; init; }

    /// <summary>The price alone.</summary>
    public required double PricePerKg { get; init; }

    public double SlagCostPerKg { get; private init; }

    public double EnergyCostPerKg { get; private init; }

    /// <summary>What using up a kilogram is taken to be worth.</summary>
    public double BonusPerKg { get; private init; }

    /// <summary>What is weighed in already.</summary>
    public double WeighedKg { get; private init; }

    /// <summary>Whether the unknown is a number of pieces. What is weighed in already is seldom whole: the rest then has a number of its own.</summary>
    public bool IsInPieces => Material?.PieceKg is not null && WeighedKg == 0;

    public required double LeastKg { get; init; }

    public required double MostKg { get; init; }

    /// <summary>Where it is not left out, its mass is at least this; null where any mass will do.</summary>
    public double? LeastIfUsedKg { get; private init; }

    /// <summary>Kilograms of liquid per kilogram; negative where metal leaves.</summary>
    public required double LiquidKg { get; init; }

    /// <summary>The material and its balance; null for tapping off.</summary>
    public ChargeMaterial? Material { get; private init; }

    public Arrival? Arrival { get; private init; }

    public double ElementKg(Element element) => elementKg(element);

    public static MeltColumn Of(ChargeMaterial material) => Of(material, slagCostPerTonne: 0, energyPricePerKWh: 0, weighedKg: 0);

    public static MeltColumn Of(ChargeMaterial material, double slagCostPerTonne, double energyPricePerKWh, double weighedKg)
    {
        var arrival = Arrival.PerKilogram(material.Composition);
        var price = material.PricePerTonne / 1000;
        var slag = material.SlagPercent / 100 * slagCostPerTonne / 1000;
        var energy = material.MeltingKWhPerTonne * energyPricePerKWh / 1000;
        var most = Math.Min(material.AvailableKg ?? double.PositiveInfinity, material.MaxKg ?? double.PositiveInfinity);
        return new(arrival.ElementKg)
        {
            Name = material.Code,
            PricePerKg = price,
            SlagCostPerKg = slag,
            EnergyCostPerKg = energy,
            CostPerKg = price + slag + energy,
            BonusPerKg = material.UseUpBonusPerTonne / 1000,
            WeighedKg = weighedKg,
            LeastKg = Math.Max(material.MinKg, weighedKg),
            MostKg = Math.Max(most, weighedKg),
            LiquidKg = arrival.LiquidKg,
            LeastIfUsedKg = material.LeastIfUsedKg,
            Material = material,
            Arrival = arrival,
        };
    }

    /// <summary>Share of a bath that tapping off leaves: an empty furnace would meet every limit.</summary>
    private const double LeastLeft = 0.001;

    /// <summary>Tapping off takes metal of the bath's analysis, and never all of it.</summary>
    public static MeltColumn TapOff(Metal bath, double mostKg, double costPerTonne)
    {
        var kilogram = Metal.Of(1, bath.Analysis);
        return new(e => -kilogram.ElementKg(e))
        {
            Name = "tap off",
            PricePerKg = costPerTonne / 1000,
            CostPerKg = costPerTonne / 1000,
            LeastKg = 0,
            MostKg = Math.Min(mostKg, (1 - LeastLeft) * bath.Kg),
            LiquidKg = -kilogram.Kg,
        };
    }

    /// <summary>Standard deviation of a quantity's mass (percent × kg) per kilogram of this material; elements scatter independently.</summary>
    public double Scatter(IReadOnlyDictionary<Element, double> terms)
    {
        if (Material is null || Material.SpreadPercent.Count == 0) return 0;
        var variance = 0.0;
        foreach (var (element, deviation) in deviations ??= Deviations(Material))
        {
            var part = terms.GetValueOrDefault(element) * deviation;
            variance += part * part;
        }

        return Math.Sqrt(variance);
    }

    /// <summary>A spread arrives as the element itself does: by the balance of one percent of it.</summary>
    private static List<(Element Element, double Deviation)> Deviations(ChargeMaterial material) =>
        [.. material.SpreadPercent.Where(s => s.Value > 0).Select(s => (s.Key, 100 * s.Value * OnePercent(material, s.Key)))];

    private static double OnePercent(ChargeMaterial material, Element element) =>
        Arrival.PerKilogram(material.Composition with { Analysis = Analysis.Of((element, 1)) }).ElementKg(element);
}
