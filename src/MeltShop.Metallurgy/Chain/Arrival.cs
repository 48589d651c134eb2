using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Chain;

/// <summary>
/// The mass balance of one weighed kilogram, the only place where it is written: of the metal that melts in (weighed mass ×
/// yield) an element arrives as that × its percent × its recovery, and iron as the remainder of the analysis at 100 %.
/// What is lost leaves the melt.
/// </summary>
public sealed class Arrival
{
    private readonly Dictionary<Element, double> elementKg;

    private Arrival(double ironKg, Dictionary<Element, double> elementKg)
    {
        IronKg = ironKg;
        this.elementKg = elementKg;
        LiquidKg = ironKg + elementKg.Values.Sum();
    }

    /// <summary>Kilograms of iron that arrive per kilogram weighed.</summary>
    public double IronKg { get; }

    /// <summary>Kilograms of liquid metal that arrive per kilogram weighed: iron and all elements.</summary>
    public double LiquidKg { get; }

    /// <summary>The elements that the material names.</summary>
    public IReadOnlyCollection<Element> Elements => elementKg.Keys;

    /// <summary>Kilograms of an element that arrive per kilogram weighed; 0 where the material does not name it.</summary>
    public double ElementKg(Element element) => elementKg.GetValueOrDefault(element);

    /// <summary>Balance of one kilogram weighed.</summary>
    public static Arrival PerKilogram(MaterialComposition material)
    {
        ArgumentNullException.ThrowIfNull(material);
        var melted = material.MetallicYieldPercent / 100;
        return new Arrival(
            melted * material.Analysis.IronPercent / 100,
            material.Analysis.ToDictionary(p => p.Key, p => melted * p.Value / 100 * material.Recovery(p.Key) / 100));
    }
}
