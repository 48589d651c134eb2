using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using static MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Metallurgy.Route;

/// <summary>What a window can bound: an element, or a quantity derived from the analysis. One list for grades, verdicts and plans.</summary>
/// <remarks>
/// Eutectic temperatures are not here, for silicon alone decides them and its own window says it; nor what needs more than an analysis
/// (solubility of carbon, maturity) or asks for no window of its own (the two temperatures of the crucible reaction).
/// </remarks>
public sealed partial record WindowQuantity
{
    private const double Step = 1e-4;

    private readonly Func<Analysis, double> value;
    private readonly Func<Bounds, IEnumerable<QuantityBounds>> rows;

    private WindowQuantity(string name, IReadOnlyList<Element> elements, Func<Analysis, double> value, Func<Bounds, IEnumerable<QuantityBounds>> rows)
    {
        (Name, Elements, this.value, this.rows) = (name, elements, value, rows);
        Needed = elements;
    }

    /// <summary>An element symbol, or the name in the calculation contract: <c>CE</c>, <c>liquidusC</c>.</summary>
    public string Name { get; }

    /// <summary><c>%</c>, <c>°C</c>, <c>MPa</c>, or <c>1</c> for a pure number.</summary>
    public string Unit { get; private init; } = "%";

    /// <summary>Its figures are temperatures, which a shop may read in another unit.</summary>
    public bool IsTemperature => Unit == "°C";

    /// <summary>Decimals that are customary.</summary>
    public int Decimals { get; private init; } = 2;

    /// <summary>What a bound on it can be, in its unit.</summary>
    public (double From, double To) Range { get; private init; } = (0, 100);

    /// <summary>The elements that enter it.</summary>
    public IReadOnlyList<Element> Elements { get; }

    /// <summary>Those without which there is no value; the others count as 0 where they were not measured, and are named.</summary>
    public IReadOnlyList<Element> Needed { get; private init; }

    /// <summary>What a laboratory has to read for it: the needed ones; of a sum of traces all that it may.</summary>
    public IReadOnlyList<Element> ToMeasure => Needed.Count > 0 ? Needed : Elements;

    /// <summary>Which iron it speaks of.</summary>
    public IronState Iron { get; private init; } = IronState.Any;

    /// <summary>It has no meaning where magnesium binds the sulphur and rounds the graphite.</summary>
    public bool IsOfUntreatedIron { get; private init; }

    /// <summary>It was found on iron with spheroidal graphite.</summary>
    public bool IsOfTreatedIron { get; private init; }

    /// <summary>The factors where it is linear in the percents; null where it is not.</summary>
    public LinearQuantity? Line { get; private init; }

    /// <summary>Where the rows of a plan speak of a logarithm of it.</summary>
    private bool IsLogarithm { get; init; }

    /// <summary>An element by itself.</summary>
    public static WindowQuantity Of(Element element) => Linear(LinearQuantity.Of(element)) with { Decimals = element.Decimals };

    /// <summary>The element or derived quantity of a name; null where there is none. Iron is what is left and has no window.</summary>
    public static WindowQuantity? Find(string? name) =>
        Derived.FirstOrDefault(quantity => quantity.Name == name)
        ?? (TryParse(name, out var element) && element != Fe ? Of(element) : null);

    /// <summary>Value of an analysis, in its unit; what was not measured counts as 0. Not a number outside the range of the formula.</summary>
    public double Value(Analysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return value(analysis);
    }

    /// <summary>What was not measured and without which nothing can be said; of a sum of traces all of them where none was measured.</summary>
    public IReadOnlyList<Element> Missing(Analysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return Needed.Count == 0 && !Elements.Any(analysis.Has) ? Elements : [.. Needed.Where(e => !analysis.Has(e))];
    }

    /// <summary>What was not measured and counted as 0 although it enters.</summary>
    public IReadOnlyList<Element> TakenAsZero(Analysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return [.. Elements.Where(e => !Needed.Contains(e) && !analysis.Has(e))];
    }

    /// <summary>False for magnesium-treated iron where it speaks of the other, and outside the range of the formula.</summary>
    public bool IsMeantFor(Analysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return !(IsOfUntreatedIron && analysis[Mg] >= ManganeseBalance.MagnesiumTreatedPercent) && double.IsFinite(value(analysis));
    }

    /// <summary>How much it changes for one point of each element: exact where it is linear, by central differences at the analysis where not.</summary>
    public IReadOnlyDictionary<Element, double> Slopes(Analysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return Line?.Terms ?? Elements.ToDictionary(e => e, e =>
            (value(analysis.With(e, analysis.OrZero(e) + Step)) - value(analysis.With(e, Math.Max(0, analysis.OrZero(e) - Step))))
            / (analysis.OrZero(e) + Step - Math.Max(0, analysis.OrZero(e) - Step)));
    }

    /// <summary>
    /// Its bounds as rows of a plan, under its name and so that a row's value reads like the quantity: exact on the bound, beside it by
    /// <see cref="Told"/>. One row where it is linear; a bound that is none is left out.
    /// </summary>
    public IReadOnlyList<QuantityBounds> Rows(Bounds bounds)
    {
        ArgumentNullException.ThrowIfNull(bounds);
        return [.. rows(bounds).Select(row => row with { Quantity = row.Quantity with { Name = Name } })];
    }

    /// <summary>What a plan's row says, in the unit of the quantity: rows of the ferrite share speak of its logarithm.</summary>
    /// <param name="name">Name of the row; one that is not known is taken as it is.</param>
    /// <param name="row">Value or bound of the row.</param>
    public static double Told(string name, double row) => Find(name) is { IsLogarithm: true } ? Math.Min(100, Math.Exp(row)) : row;
}
