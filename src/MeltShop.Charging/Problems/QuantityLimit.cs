using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Charging.Problems;

/// <summary>Bounds on a quantity of the melt, in the quantity's own unit (percentage points for an element). At least one bound is given.</summary>
/// <param name="Quantity">An element or a linear combination.</param>
/// <param name="Min">Least value, or null.</param>
/// <param name="Max">Greatest value, or null; not below <paramref name="Min"/>.</param>
/// <param name="Margin">How far inside the bounds the plan has to end, 0 or more.</param>
public sealed record QuantityLimit(LinearQuantity Quantity, double? Min, double? Max, double Margin = 0);
