using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Chain;

/// <summary>An amount of liquid iron as element masses: what every step of the chain takes in and gives out.</summary>
public sealed class Metal
{
    private readonly SortedDictionary<Element, double> elementKg;

    private Metal(double kg, SortedDictionary<Element, double> elementKg)
    {
        Kg = kg;
        this.elementKg = elementKg;
    }

    /// <summary>An empty furnace.</summary>
    public static Metal None { get; } = new(0, []);

    /// <summary>Mass of the liquid metal, kg, iron included.</summary>
    public double Kg { get; }

    /// <summary>The elements whose mass is known, zero included.</summary>
    public IReadOnlyCollection<Element> Elements => elementKg.Keys;

    /// <summary>Mass percents; empty where there is no metal.</summary>
    public Analysis Analysis => Kg > 0 ? Analysis.Of(elementKg.Select(p => KeyValuePair.Create(p.Key, 100 * p.Value / Kg))) : Analysis.Empty;

    /// <summary>A known mass with a known analysis.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The mass is negative or not finite.</exception>
    public static Metal Of(double kg, Analysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        RequireMass(kg, nameof(kg));
        return new Metal(kg, new(analysis.ToDictionary(p => p.Key, p => kg * p.Value / 100)));
    }

    /// <summary>Kilograms of an element; 0 where it is not known.</summary>
    public double ElementKg(Element element) => elementKg.GetValueOrDefault(element);

    /// <summary>Mass percent of an element; 0 where it is not known or where there is no metal.</summary>
    public double Percent(Element element) => Kg > 0 ? 100 * ElementKg(element) / Kg : 0;

    /// <summary>This metal with so many weighed kilograms of a material melted into it (charging, addition).</summary>
    public Metal Plus(Arrival arrival, double weighedKg)
    {
        ArgumentNullException.ThrowIfNull(arrival);
        RequireMass(weighedKg, nameof(weighedKg));
        var sum = new SortedDictionary<Element, double>(elementKg);
        foreach (var element in arrival.Elements) sum[element] = sum.GetValueOrDefault(element) + weighedKg * arrival.ElementKg(element);
        return new Metal(Kg + weighedKg * arrival.LiquidKg, sum);
    }

    /// <summary>This metal mixed with another (pouring back, mixing of ladles).</summary>
    public Metal Plus(Metal other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var sum = new SortedDictionary<Element, double>(elementKg);
        foreach (var (element, kg) in other.elementKg) sum[element] = sum.GetValueOrDefault(element) + kg;
        return new Metal(Kg + other.Kg, sum);
    }

    /// <summary>What stays when some of it is taken out (tapping): less mass, the same analysis.</summary>
    /// <exception cref="ArgumentOutOfRangeException">More is taken than there is.</exception>
    public Metal Less(double kg)
    {
        RequireMass(kg, nameof(kg));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(kg, Kg);
        var left = Kg > 0 ? (Kg - kg) / Kg : 0;
        return new Metal(Kg - kg, new(elementKg.ToDictionary(p => p.Key, p => p.Value * left)));
    }

    /// <summary>What stays when so much of one element leaves (a loss, a slag, a vapour): the mass falls with it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">More is taken than there is.</exception>
    public Metal Without(Element element, double kg)
    {
        ArgumentNullException.ThrowIfNull(element);
        RequireMass(kg, nameof(kg));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(kg, ElementKg(element));
        return new Metal(Kg - kg, new(elementKg) { [element] = ElementKg(element) - kg });
    }

    private static void RequireMass(double kg, string name)
    {
        if (!double.IsFinite(kg) || kg < 0) throw new ArgumentOutOfRangeException(name, kg, "A mass is finite and not negative, kg.");
    }
}
