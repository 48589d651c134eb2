using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>
/// Carbon and silicon from the two arrests of a cup that freezes white. From memory: calibrate against the spectrometer before
/// use. It only holds where the cup froze fully white and the iron is not near or above the graphite eutectic.
/// </summary>
public static class WhiteCup
{
    private const string Doubt = "From memory; calibrate against samples of your own. The constant of carbon must be minus 6.05: plus would give 15 % C.";

    /// <summary>The record of carbon.</summary>
    public static Formula CarbonFormula { get; } = new()
    {
        Key = "white-cup-carbon",
        Name = "Carbon from a white cup",
        Sentence = "Carbon from the liquidus and the white eutectic arrest.",
        Expression = "C = 0.01693 TE − 0.00796 TL − 6.05",
        Symbols = [new("TE", "white eutectic arrest", "°C"), new("TL", "liquidus arrest", "°C")],
        Unit = "%",
        Sources = [Bibliography.WhiteCup],
        Range = "Tellurium cup, fully white, hypoeutectic.",
        Doubt = Doubt,
        Code = $"{nameof(WhiteCup)}.{nameof(CarbonPercent)}",
        Example = new("TE 1110, TL 1200 → 3.19 (by hand)", () => CarbonPercent(1110, 1200), 3.19, 0.005),
    };

    /// <summary>The record of silicon.</summary>
    public static Formula SiliconFormula { get; } = new()
    {
        Key = "white-cup-silicon",
        Name = "Silicon from a white cup",
        Sentence = "Silicon from the white eutectic arrest.",
        Expression = "Si = 78.411 − 0.06831 TE − 4.28087 P",
        Symbols = [new("TE", "white eutectic arrest", "°C"), new("P", "phosphorus", "%")],
        Unit = "%",
        Sources = [Bibliography.WhiteCup],
        Range = "Tellurium cup, fully white, hypoeutectic; phosphorus known.",
        Doubt = Doubt,
        Code = $"{nameof(WhiteCup)}.{nameof(SiliconPercent)}",
        Example = new("TE 1110, P 0.05 → 2.37 (by hand)", () => SiliconPercent(1110, 0.05), 2.37, 0.005),
    };

    /// <summary>Carbon from both arrests.</summary>
    /// <param name="eutecticC">White eutectic arrest, °C.</param>
    /// <param name="liquidusC">Liquidus arrest, °C.</param>
    public static double CarbonPercent(double eutecticC, double liquidusC) => 0.01693 * eutecticC - 0.00796 * liquidusC - 6.05;

    /// <summary>Silicon from the eutectic arrest.</summary>
    /// <param name="eutecticC">White eutectic arrest, °C.</param>
    /// <param name="phosphorusPercent">P, %.</param>
    public static double SiliconPercent(double eutecticC, double phosphorusPercent) => 78.411 - 0.06831 * eutecticC - 4.28087 * phosphorusPercent;
}
