using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>
/// A quantity that is linear in the mass percents: an element, a carbon equivalent, a factor. Value = constant + Σ term × percent.
/// Linear in the percents, it is linear in the weighed masses too once multiplied by the liquid mass: a row of the program.
/// </summary>
/// <param name="Name">What it is called: an element symbol or a name such as <c>CE</c>.</param>
/// <param name="Terms">Factor by element.</param>
/// <param name="Constant">Added to the sum, in the quantity's own unit.</param>
public sealed record LinearQuantity(string Name, IReadOnlyDictionary<Element, double> Terms, double Constant = 0)
{
    /// <summary>The percent of one element.</summary>
    public static LinearQuantity Of(Element element)
    {
        ArgumentNullException.ThrowIfNull(element);
        return new(element.Symbol, new Dictionary<Element, double> { [element] = 1 });
    }

    /// <summary>Value for an analysis; what was not measured counts as 0, see <see cref="AssumedZero"/>.</summary>
    public double Value(Analysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return Constant + Terms.Sum(t => t.Value * analysis.OrZero(t.Key));
    }

    /// <summary>The elements that the value needs and the analysis does not have.</summary>
    public IEnumerable<Element> AssumedZero(Analysis analysis) => Terms.Keys.Where(e => !analysis.Has(e)).Order();
}
