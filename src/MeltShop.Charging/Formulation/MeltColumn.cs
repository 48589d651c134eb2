using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Charging.Formulation;

/// <summary>Something that changes the melt by kilograms: a material that goes in, or metal that is tapped off.</summary>
internal sealed class MeltColumn
{
    private readonly Func<Element, double> elementKg;

    private MeltColumn(Func<Element, double> elementKg) => this.elementKg = elementKg;

    public required string Name { get; init; }

    public required double CostPerKg { get; init; }

    public required double LeastKg { get; init; }

    public required double MostKg { get; init; }

    /// <summary>Kilograms of liquid per kilogram; negative where metal leaves.</summary>
    public required double LiquidKg { get; init; }

    /// <summary>The material and its balance; null for tapping off.</summary>
    public ChargeMaterial? Material { get; private init; }

    public Arrival? Arrival { get; private init; }

    public double ElementKg(Element element) => elementKg(element);

    public static MeltColumn Of(ChargeMaterial material)
    {
        var arrival = Arrival.PerKilogram(material.Composition);
        return new(arrival.ElementKg)
        {
            Name = material.Code,
            CostPerKg = material.PricePerTonne / 1000,
            LeastKg = material.MinKg,
            MostKg = Math.Min(material.AvailableKg ?? double.PositiveInfinity, material.MaxKg ?? double.PositiveInfinity),
            LiquidKg = arrival.LiquidKg,
            Material = material,
            Arrival = arrival,
        };
    }

    /// <summary>Tapping off takes metal of the bath's analysis.</summary>
    public static MeltColumn TapOff(Metal bath, double mostKg, double costPerTonne)
    {
        var kilogram = Metal.Of(1, bath.Analysis);
        return new(e => -kilogram.ElementKg(e))
        {
            Name = "tap off",
            CostPerKg = costPerTonne / 1000,
            LeastKg = 0,
            MostKg = Math.Min(mostKg, bath.Kg),
            LiquidKg = -kilogram.Kg,
        };
    }

    /// <summary>Standard deviation of a quantity's mass (percent × kg) per kilogram of this material; elements scatter independently.</summary>
    public double Scatter(IReadOnlyDictionary<Element, double> terms)
    {
        if (Material is null || Material.SpreadPercent.Count == 0) return 0;
        var variance = 0.0;
        foreach (var (element, spread) in Material.SpreadPercent)
        {
            if (spread == 0 || terms.GetValueOrDefault(element) is not (not 0 and var term)) continue;
            var perPercent = Arrival.PerKilogram(Material.Composition with { Analysis = Analysis.Of((element, 1)) }).ElementKg(element);
            variance += Math.Pow(100 * term * spread * perPercent, 2);
        }

        return Math.Sqrt(variance);
    }
}
