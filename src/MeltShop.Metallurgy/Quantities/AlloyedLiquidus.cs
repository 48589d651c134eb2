using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;
using static MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>A liquidus regression that counts alloying elements: beside <see cref="Liquidus"/>, never mixed with it.</summary>
public static class AlloyedLiquidus
{
    /// <summary>The temperature as a row, °C.</summary>
    public static LinearQuantity Quantity { get; } = new(
        "alloyedLiquidusC",
        new Dictionary<Element, double> { [C] = -110, [Si] = -25, [Mn] = 3, [P] = -35, [S] = -71, [Ni] = -2, [Cr] = -7 },
        Constant: 1625);

    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "liquidus-alloyed",
        Name = "Liquidus temperature with alloying elements",
        Sentence = "The first arrest of a cup, from a regression over alloyed irons.",
        Expression = "TL = 1625 − 110 C − 25 Si + 3 Mn − 35 P − 71 S − 2 Ni − 7 Cr",
        Symbols = [new("C … Cr", "analysis", "%")],
        Unit = "°C",
        Sources = [Bibliography.Koriyama],
        Range = "Hypoeutectic grey iron.",
        Doubt = "It lies 10 °C above the printed line of Heine for the example: calibrate the cup stand.",
        Code = $"{nameof(AlloyedLiquidus)}.{nameof(Quantity)}",
        Example = new("C 3.30, Si 2.00, Mn 0.60, P 0.05, S 0.08 → 1206.4 °C (by hand)",
            () => Quantity.Value(Analysis.Of((C, 3.30), (Si, 2.00), (Mn, 0.60), (P, 0.05), (S, 0.08))), 1206.4, 0.05),
    };
}
