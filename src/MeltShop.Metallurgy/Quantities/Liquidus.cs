using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;
using static MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>The temperature at which austenite starts to freeze in a cup, and the carbon equivalent that goes with it.</summary>
public static class Liquidus
{
    /// <summary>End of the line: beyond it graphite or carbide freezes first and the formula has nothing to say.</summary>
    public const double MaximumCarbonEquivalent = 4.34;

    private const double InterceptC = 1569;
    private const double SlopeCPerPercent = 97.3;

    /// <summary>Liquidus carbon equivalent as a row: C + Si/4 + P/2.</summary>
    public static LinearQuantity CarbonEquivalent { get; } =
        new("CEL", new Dictionary<Element, double> { [C] = 1, [Si] = 0.25, [P] = 0.5 });

    /// <summary>The record of the liquidus carbon equivalent.</summary>
    public static Formula CarbonEquivalentFormula { get; } = new()
    {
        Key = "liquidus-carbon-equivalent",
        Name = "Liquidus carbon equivalent",
        Sentence = "The carbon of the plain iron-carbon alloy that would freeze at the same temperature; what a cup reads.",
        Expression = "CEL = C + Si/4 + P/2",
        Symbols = [new("C, Si, P", "analysis", "%")],
        Unit = "%",
        Sources = [new("cel", "Classic carbon equivalent of thermal analysis", Standing.Remembered), Bibliography.Koriyama],
        Range = "Hypoeutectic iron. C and Si must be measured.",
        Doubt = "Koriyama et al. find C + 0.23 Si − 0.03 Mn + 0.32 P + 0.64 S + 0.02 Ni + 0.06 Cr: phosphorus weighs less there.",
        Code = $"{nameof(Liquidus)}.{nameof(CarbonEquivalent)}",
        Example = new("C 3.30, Si 2.00, P 0.05 → 3.825 (by hand)", () => CarbonEquivalent.Value(Analysis.Of((C, 3.30), (Si, 2.00), (P, 0.05))), 3.825, 1e-12),
    };

    /// <summary>The record of the liquidus temperature.</summary>
    public static Formula TemperatureFormula { get; } = new()
    {
        Key = "liquidus-temperature",
        Name = "Liquidus temperature",
        Sentence = "The first arrest of a cup.",
        Expression = "TL = 1569 − 97.3 · CEL",
        Symbols = [new("CEL", "liquidus carbon equivalent", "%")],
        Unit = "°C",
        Sources = [Bibliography.Heine],
        Range = "CEL 2.25 to 4.34 as printed; no value above 4.34.",
        Doubt = "Published lines lie up to 13 °C apart (0.1 of CEL) near the eutectic: each shop fits its own.",
        Code = $"{nameof(Liquidus)}.{nameof(TemperatureC)}",
        Example = new("CEL 3.79 → 1200 °C (Heine, printed)", () => TemperatureC(3.79), 1200, 0.5),
    };

    /// <summary>Liquidus temperature of hypoeutectic iron.</summary>
    /// <param name="carbonEquivalentPercent">Liquidus carbon equivalent, %, up to <see cref="MaximumCarbonEquivalent"/>.</param>
    /// <returns>°C, 1200.2 for 3.79; not a number above the maximum.</returns>
    public static double TemperatureC(double carbonEquivalentPercent) =>
        carbonEquivalentPercent > MaximumCarbonEquivalent ? double.NaN : InterceptC - SlopeCPerPercent * carbonEquivalentPercent;
}
