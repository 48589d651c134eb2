using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>One of the carbon-equivalent forms in use; results store which one was used.</summary>
/// <param name="Id">Key of the form, stored with results.</param>
/// <param name="Expression">The formula as text.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Terms">Factor by element.</param>
public sealed record CarbonEquivalentForm(string Id, string Expression, Source Source, IReadOnlyDictionary<Element, double> Terms)
{
    /// <summary>The form as a row that an optimiser can limit; its name is <c>CE</c> whatever the form.</summary>
    public LinearQuantity Quantity { get; } = new("CE", Terms);
}
