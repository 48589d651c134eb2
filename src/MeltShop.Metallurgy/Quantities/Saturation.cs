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
}
