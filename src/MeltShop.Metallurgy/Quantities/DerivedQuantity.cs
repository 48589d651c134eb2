using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>A quantity worked out from an analysis, with what it rests on.</summary>
/// <param name="Name">Its name, as the calculation contract writes it: <c>CE</c>, <c>liquidusC</c>.</param>
/// <param name="Value">The value, unrounded; null where the analysis cannot support it.</param>
/// <param name="Unit">Unit of the value: <c>%</c>, <c>°C</c>, or <c>1</c> for a pure number.</param>
/// <param name="Expression">The formula used, as text; for the carbon equivalent it names the form.</param>
/// <param name="Source">Where the formula comes from.</param>
/// <param name="AssumedZero">Elements that were not measured and were taken as 0.</param>
/// <param name="Why">
/// Why there is no value: <c>quantity.needs</c> (the symbols missing, as one text), <c>quantity.needsOneOf</c> (any of these symbols),
/// <c>quantity.aboveEutectic</c> (value and limit of CEL), <c>quantity.magnesiumTreated</c> (magnesium and limit),
/// <c>quantity.outOfRange</c> (the expression has no meaning for this analysis). Null where there is one.
/// </param>
/// <param name="Iron">Which iron it speaks of.</param>
public sealed record DerivedQuantity(
    string Name,
    double? Value,
    string Unit,
    string Expression,
    string Source,
    IReadOnlyList<Element> AssumedZero,
    Finding? Why,
    IronState Iron = IronState.Any);
