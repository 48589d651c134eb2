using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>Equilibrium temperatures of the grey and the white eutectic: the wider the gap, the easier an iron freezes grey.</summary>
public static class EutecticTemperature
{
    private const string Doubt = "From memory. Arrests lie below: on average 14.4 °C for grey, 8.3 °C for white in irons of CE 3.7 to 3.8 (Metals 10, 2020, 993).";

    /// <summary>The record of the grey eutectic.</summary>
    public static Formula GreyFormula { get; } = new()
    {
        Key = "grey-eutectic",
        Name = "Grey eutectic temperature",
        Sentence = "Equilibrium of liquid, austenite and graphite.",
        Expression = "T_st = 1153 + 6.7 Si",
        Symbols = [new("Si", "analysis", "%")],
        Unit = "°C",
        Sources = [Bibliography.EutecticLines],
        Range = "Unalloyed iron, Si up to about 3 %.",
        Doubt = Doubt,
        Code = $"{nameof(EutecticTemperature)}.{nameof(GreyC)}",
        Example = new("Si 2.0 → 1166.4 °C (by hand)", () => GreyC(2.0), 1166.4, 1e-9),
    };

    /// <summary>The record of the white eutectic.</summary>
    public static Formula WhiteFormula { get; } = new()
    {
        Key = "white-eutectic",
        Name = "White eutectic temperature",
        Sentence = "Equilibrium of liquid, austenite and carbide.",
        Expression = "T_mst = 1147 − 12 Si",
        Symbols = [new("Si", "analysis", "%")],
        Unit = "°C",
        Sources = [Bibliography.EutecticLines],
        Range = "Unalloyed iron, Si up to about 3 %.",
        Doubt = Doubt,
        Code = $"{nameof(EutecticTemperature)}.{nameof(WhiteC)}",
        Example = new("Si 2.0 → 1123.0 °C (by hand)", () => WhiteC(2.0), 1123.0, 1e-9),
    };

    /// <summary>Grey eutectic.</summary>
    /// <param name="siliconPercent">Si, %.</param>
    public static double GreyC(double siliconPercent) => 1153 + 6.7 * siliconPercent;

    /// <summary>White eutectic.</summary>
    /// <param name="siliconPercent">Si, %.</param>
    public static double WhiteC(double siliconPercent) => 1147 - 12 * siliconPercent;
}
