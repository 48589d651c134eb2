using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Heat;

/// <summary>How cold additions change the temperature of a bath, power off.</summary>
public static class AdditionHeat
{
    /// <summary>From this much carbon and silicon on a material is no iron or steel, and its heat must be given, %.</summary>
    public const double IronOrSteelBelowPercent = 10;

    private const double SteelAt1450 = 341;

    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "addition-temperature",
        Name = "Temperature drop by additions",
        Sentence = "How much cooler additions make the bath; negative where they heat it.",
        Expression = "ΔT = Σ mᵢhᵢ / (0.23 (M + Σ mᵢ)), h of steel = 341 + 0.23 (T − 1450)",
        Symbols =
        [
            new("mᵢ", "addition, weighed", "kg"), new("hᵢ", "heat to bring it from cold into solution", "kWh/t"), new("M", "bath before", "kg"),
            new("T", "bath temperature", "°C"),
        ],
        Unit = "K",
        Sources = [Bibliography.Thermochemistry, Bibliography.Doetsch],
        Range = "Additions small against the bath. Steel and iron have a default; graphite takes about 1180, FeSi75 gives about 160 (sign sure, size ± 50 %).",
        Doubt = "Heats of ferro-alloys come from heats of solution from memory: measure before and after, and enter your own.",
        Code = $"{nameof(AdditionHeat)}.{nameof(DropK)}",
        Example = new("1 % cold cast iron (378 kWh/t at 1450 °C) → 16.3 K (by hand)", () => DropK(1000, [(10, 378)]), 16.3, 0.05),
    };

    /// <summary>Heat that cold iron or steel takes into a bath.</summary>
    /// <param name="analysis">Analysis of the addition.</param>
    /// <param name="temperatureC">Bath temperature, °C.</param>
    /// <returns>kWh per tonne, 341 at 1450 °C; null where it is no iron or steel (C + Si of 10 % or more).</returns>
    public static double? SteelKWhPerTonne(Analysis analysis, double temperatureC)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return analysis.OrZero(Element.C) + analysis.OrZero(Element.Si) < IronOrSteelBelowPercent
            ? SteelAt1450 + HeatContent.KWhPerTonneKelvin * (temperatureC - 1450)
            : null;
    }

    /// <summary>Temperature drop of a bath by additions.</summary>
    /// <param name="bathKg">Bath before, kg, over 0.</param>
    /// <param name="additions">Weighed kilograms and kWh per tonne of each.</param>
    /// <returns>Kelvin, positive = cooler.</returns>
    public static double DropK(double bathKg, IEnumerable<(double Kg, double KWhPerTonne)> additions)
    {
        var list = additions.ToList();
        return list.Count == 0 ? 0 : list.Sum(a => a.Kg * a.KWhPerTonne) / (HeatContent.KWhPerTonneKelvin * (bathKg + list.Sum(a => a.Kg)));
    }
}
