using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>Strength that a grey iron of its saturation normally has in the 30 mm bar, and what was made of it.</summary>
public static class GreyStrength
{
    /// <summary>The record of the normal strength.</summary>
    public static Formula NormalFormula { get; } = new()
    {
        Key = "normal-strength",
        Name = "Normal tensile strength of grey iron",
        Sentence = "What an unalloyed iron of this saturation reaches in a separately cast 30 mm bar.",
        Expression = "R = 981 − 785 Sc",
        Symbols = [new("Sc", "degree of saturation, longer form", "1")],
        Unit = "MPa",
        Sources = [Bibliography.Saturation, Bibliography.Maturity],
        Range = "Hypoeutectic unalloyed grey iron, Sc 0.7 to 1.0.",
        Doubt = "1000 − 800 Sc is the rounded form: 280 instead of 274.5 at 0.90.",
        Code = $"{nameof(GreyStrength)}.{nameof(NormalMPa)}",
        Example = new("Sc 0.90 → 274.5 MPa (by hand)", () => NormalMPa(0.90), 274.5, 1e-9),
    };

    /// <summary>The record of the maturity.</summary>
    public static Formula MaturityFormula { get; } = new()
    {
        Key = "maturity",
        Name = "Maturity",
        Sentence = "Strength reached over normal strength: under 100 the iron gives less than its composition allows.",
        Expression = "RG = 100 R_m / (981 − 785 Sc)",
        Symbols = [new("R_m", "tensile strength of the 30 mm bar", "MPa"), new("Sc", "degree of saturation, longer form", "1")],
        Unit = "%",
        Sources = [Bibliography.Maturity],
        Range = "As the normal strength.",
        Code = $"{nameof(GreyStrength)}.{nameof(MaturityPercent)}",
        Example = new("300 MPa at Sc 0.90 → 109.3 % (by hand)", () => MaturityPercent(300, 0.90), 109.29, 0.005),
    };

    /// <summary>Normal strength in the 30 mm bar.</summary>
    /// <param name="saturation">Degree of saturation by the longer form, 0.7 to 1.0: <see cref="Saturation.LongDegree"/>.</param>
    public static double NormalMPa(double saturation) => 981 - 785 * saturation;

    /// <summary>Normal strength by the rounded form 1000 − 800 Sc.</summary>
    /// <param name="saturation">Degree of saturation by the longer form, 0.7 to 1.0: <see cref="Saturation.LongDegree"/>.</param>
    public static double NormalRoundedMPa(double saturation) => 1000 - 800 * saturation;

    /// <summary>Maturity.</summary>
    /// <param name="tensileMPa">Tensile strength of the 30 mm bar, MPa.</param>
    /// <param name="saturation">Degree of saturation by the longer form, 0.7 to 1.0: <see cref="Saturation.LongDegree"/>.</param>
    public static double MaturityPercent(double tensileMPa, double saturation) => 100 * tensileMPa / NormalMPa(saturation);
}
