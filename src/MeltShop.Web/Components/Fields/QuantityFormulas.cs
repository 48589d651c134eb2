using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Web.Components.Fields;

/// <summary>The formula behind each quantity that has a window and is no element.</summary>
internal static class QuantityFormulas
{
    /// <summary>Null for an element.</summary>
    public static Formula? Of(string? quantity) => quantity switch
    {
        null => null,
        "liquidusC" => Liquidus.TemperatureFormula,
        "Sc" => Saturation.Formula,
        "ferritePercent" => PearliteFactor.FerriteFormula,
        "freeNitrogen" => Nitrogen.Formula,
        "normalStrengthMPa" => GreyStrength.NormalFormula,
        _ when quantity == CarbonEquivalent.Default.Quantity.Name => CarbonEquivalent.Formula,
        _ when quantity == Liquidus.CarbonEquivalent.Name => Liquidus.CarbonEquivalentFormula,
        _ when quantity == AlloyedLiquidus.Quantity.Name => AlloyedLiquidus.Formula,
        _ when quantity == ManganeseBalance.Quantity.Name => ManganeseBalance.Formula,
        _ when quantity == PearliteFactor.Quantity.Name => PearliteFactor.Formula,
        _ when quantity == TraceFactor.Quantity.Name => TraceFactor.Formula,
        _ => null,
    };

    /// <summary>Those of all these quantities, each once.</summary>
    public static IReadOnlyList<Formula> Of(IEnumerable<string> quantities) => [.. quantities.Select(Of).OfType<Formula>().Distinct()];
}
