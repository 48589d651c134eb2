using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Route;

/// <summary>A row of a window: an element or a derived quantity, linear in the percents, and where it must lie.</summary>
/// <param name="Quantity">What is bounded.</param>
/// <param name="Bounds">Where it must lie.</param>
public sealed record QuantityBounds(LinearQuantity Quantity, Bounds Bounds);
