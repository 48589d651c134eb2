using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Chain;

/// <summary>
/// One material into a bath until one element stands at a target, the mass that arrives counted. Also dilution: a material
/// poorer than the target pulls the element down. Several elements at once are the optimiser's job.
/// </summary>
public static class Addition
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "addition-balance",
        Name = "Addition, balance",
        Sentence = "The mass of one material that brings one element of a bath to a target.",
        Expression = "m = M (x_t − x_0) / (100 e − x_t L)",
        Symbols =
        [
            new("M", "bath", "kg"), new("x_0, x_t", "element now, wanted", "%"), new("e", "element that arrives per kilogram weighed", "kg/kg"),
            new("L", "liquid metal that arrives per kilogram weighed", "kg/kg"),
        ],
        Unit = "kg",
        Sources = [Bibliography.Balance],
        Range = "A material richer than the target to raise it, poorer to lower it; no value otherwise.",
        Code = $"{nameof(Addition)}.{nameof(Kg)}",
        Example = new("1000 kg, Si 1.80 → 2.10, FeSi of 75 % at 90 % recovery → 4.576 kg (by hand)",
            () => Kg(
                Metal.Of(1000, Analysis.Of((Element.Si, 1.80))),
                Arrival.PerKilogram(new() { Analysis = Analysis.Of((Element.Si, 75)), RecoveryPercent = new Dictionary<Element, double> { [Element.Si] = 90 } }),
                Element.Si, 2.10)!.Value,
            4.576, 0.0005),
    };

    /// <summary>Weighed mass of a material that brings an element to a target.</summary>
    /// <param name="bath">The bath.</param>
    /// <param name="material">What a kilogram of the material brings.</param>
    /// <param name="element">The element.</param>
    /// <param name="targetPercent">Wanted, % of the bath after the addition.</param>
    /// <returns>Kilograms, 0 where it stands at the target already; null where this material cannot get there.</returns>
    public static double? Kg(Metal bath, Arrival material, Element element, double targetPercent)
    {
        ArgumentNullException.ThrowIfNull(bath);
        ArgumentNullException.ThrowIfNull(material);
        var lackingKg = bath.Kg * targetPercent / 100 - bath.ElementKg(element);
        if (lackingKg == 0) return 0;
        var kg = lackingKg / (material.ElementKg(element) - targetPercent / 100 * material.LiquidKg);
        return double.IsFinite(kg) && kg > 0 ? kg : null;
    }

    /// <summary>Mass of another liquid iron that, mixed in, brings an element to a target (mixing of ladles, turned round).</summary>
    /// <param name="bath">The ladle that is filled up.</param>
    /// <param name="other">The iron that is poured in; only its analysis counts.</param>
    /// <param name="element">The element.</param>
    /// <param name="targetPercent">Wanted, % of the mixture.</param>
    /// <returns>Kilograms, 0 where it stands at the target already; null where this iron cannot get there.</returns>
    public static double? MixedKg(Metal bath, Metal other, Element element, double targetPercent)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Kg(bath, Arrival.PerKilogram(new() { Analysis = other.Analysis }), element, targetPercent);
    }
}
