using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Charging.Problems;

/// <summary>Bounds on a quantity of the melt, in the quantity's own unit (percentage points for an element). At least one bound is given.</summary>
/// <param name="Quantity">An element or a linear combination.</param>
/// <param name="Min">Least value, or null.</param>
/// <param name="Max">Greatest value, or null; not below <paramref name="Min"/>.</param>
/// <param name="Margin">How far inside the bounds the plan has to end, 0 or more.</param>
public sealed record QuantityLimit(LinearQuantity Quantity, double? Min, double? Max, double Margin = 0)
{
    /// <summary>The wish to end near a value; null for none.</summary>
    public Nearness? Nearness { get; init; }

    /// <summary>
    /// How much a miss matters where the limits cannot all be kept: a miss by half the window (by a tenth of the bound where there is only one) counts as
    /// much as one percent of the melt, times this; above 0.
    /// </summary>
    public double HarmWeight { get; init; } = 1;

    /// <summary>
    /// A margin that the bounds hold already, in the unit in which people are told the quantity: rows that stand for a curve are made for bounds that were
    /// moved inward. For words alone.
    /// </summary>
    public double HeldMargin { get; init; }
}
