using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>Degree of saturation: carbon over the carbon that the eutectic would have with this silicon and phosphorus.</summary>
public static class Saturation
{
    /// <summary>Eutectic carbon of the binary system, %. Printed elsewhere as 4.23, 4.3 or a CE of 4.2; 4.26 is what the forms here go with.</summary>
    public const double EutecticCarbonPercent = 4.26;

    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "saturation",
        Name = "Degree of saturation",
        Sentence = "1 is eutectic, below 1 hypoeutectic, above 1 hypereutectic.",
        Expression = "Sc = C / (4.26 − (Si + P)/3)",
        Symbols = [new("C, Si, P", "analysis", "%")],
        Unit = "1",
        Sources = [Bibliography.Du, Bibliography.Saturation],
        Range = "Unalloyed cast irons, Si + P under 12.78 %. C and Si must be measured.",
        Doubt = "The longer form 4.26 − 0.31 Si − 0.27 P gives 1.0569 for the example: the choice moves Sc by 0.016.",
        Code = $"{nameof(Saturation)}.{nameof(Degree)}",
        Example = new("C 3.8, Si 2.1, P 0.05 → 1.07 (Du, printed)", () => Degree(3.8, 2.1, 0.05), 1.07, 0.005),
    };

    /// <summary>The record of the longer form.</summary>
    public static Formula LongFormula { get; } = new()
    {
        Key = "saturation-long",
        Name = "Degree of saturation, longer form",
        Sentence = "The same measure with the weights of the source of the strength formulas.",
        Expression = "Sc = C / (4.26 − 0.31 Si − 0.27 P)",
        Symbols = [new("C, Si, P", "analysis", "%")],
        Unit = "1",
        Sources = [Bibliography.Saturation],
        Range = "Unalloyed cast irons. For normal strength and maturity.",
        Doubt = "Most texts weigh P with 0.33 today.",
        Code = $"{nameof(Saturation)}.{nameof(LongDegree)}",
        Example = new("C 3.30, Si 1.90, P 0.05 → 0.9023 (by hand)", () => LongDegree(3.30, 1.90, 0.05), 0.9023, 0.00005),
    };

    /// <summary>Degree of saturation.</summary>
    /// <param name="carbonPercent">C, %.</param>
    /// <param name="siliconPercent">Si, %.</param>
    /// <param name="phosphorusPercent">P, %.</param>
    /// <returns>A pure number, 1.0724 for C 3.8, Si 2.1, P 0.05; not a number where no eutectic carbon is left (Si + P ≥ 12.78 %).</returns>
    public static double Degree(double carbonPercent, double siliconPercent, double phosphorusPercent)
    {
        var eutectic = EutecticCarbonPercent - (siliconPercent + phosphorusPercent) / 3;
        return eutectic > 0 ? carbonPercent / eutectic : double.NaN;
    }

    /// <summary>Degree of saturation by the longer form, with which the strength formulas were found.</summary>
    /// <param name="carbonPercent">C, %.</param>
    /// <param name="siliconPercent">Si, %.</param>
    /// <param name="phosphorusPercent">P, %.</param>
    /// <returns>A pure number, 0.9023 for C 3.30, Si 1.90, P 0.05; not a number where no eutectic carbon is left.</returns>
    public static double LongDegree(double carbonPercent, double siliconPercent, double phosphorusPercent)
    {
        var eutectic = EutecticCarbonPercent - 0.31 * siliconPercent - 0.27 * phosphorusPercent;
        return eutectic > 0 ? carbonPercent / eutectic : double.NaN;
    }
}
