using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;
using static MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>The carbon that liquid iron can dissolve: a carburiser beyond it swims.</summary>
public static class CarbonSolubility
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "carbon-solubility",
        Name = "Carbon solubility",
        Sentence = "The most carbon that a bath can hold; carburise before silicon is added.",
        Expression = "C_max = 1.30 + 0.00257 T − 0.31 Si − 0.33 P − 0.45 S + 0.028 Mn",
        Symbols = [new("T", "bath temperature", "°C"), new("Si … Mn", "analysis", "%")],
        Unit = "%",
        Sources = [Bibliography.CarbonSolubility],
        Range = "1150 to 1600 °C, unalloyed iron. A check whether carbon can dissolve at all, no aim.",
        Doubt = "From memory. At 1152 °C without silicon it gives the eutectic carbon of 4.26.",
        Code = $"{nameof(CarbonSolubility)}.{nameof(MostPercent)}",
        Example = new("pure iron-carbon at 1152 °C → 4.26 (eutectic carbon, Heine)", () => MostPercent(1152, Analysis.Empty), 4.26, 0.005),
    };

    /// <summary>Most carbon that dissolves.</summary>
    /// <param name="temperatureC">Bath temperature, °C.</param>
    /// <param name="analysis">Bath; Si, P, S, Mn not measured count as 0.</param>
    public static double MostPercent(double temperatureC, Analysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return 1.30 + 0.00257 * temperatureC - 0.31 * analysis.OrZero(Si) - 0.33 * analysis.OrZero(P) - 0.45 * analysis.OrZero(S) + 0.028 * analysis.OrZero(Mn);
    }
}
