using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;
using static MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>How strongly a ductile iron tends to pearlite, and the ferrite that leaves.</summary>
public static class PearliteFactor
{
    private const double FerriteScale = 961;

    private const string Doubt =
        "The extract that could be read prints 9.0 for Sn and 375 for Pb. Tin acts about ten times as strongly as copper " +
        "everywhere else, so 9.0 looks like a lost digit: 90.0 is used. 357 against 375 for Pb cannot be settled; at 0.0005 % it is 0.009 of the factor.";

    /// <summary>The factor as a row.</summary>
    public static LinearQuantity Quantity { get; } = new(
        "pearliteFactor",
        new Dictionary<Element, double>
        {
            [Mn] = 3.00, [Si] = -2.65, [Cu] = 7.75, [Sn] = 90.0, [Pb] = 357, [Bi] = 333, [As] = 20.1, [Cr] = 9.60, [Sb] = 71.7,
        },
        Constant: 2.65 * 2.00);

    /// <summary>The record of the factor.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "pearlite-factor",
        Name = "Pearlite factor",
        Sentence = "The higher, the more pearlite.",
        Expression = "Px = 3.00 Mn − 2.65 (Si − 2.00) + 7.75 Cu + 90.0 Sn + 357 Pb + 333 Bi + 20.1 As + 9.60 Cr + 71.7 Sb",
        Symbols = [new("Mn … Sb", "analysis of the poured iron", "%")],
        Unit = "1",
        Sources = [Bibliography.Pearlite],
        Range = "Ductile iron as poured; Mn, Si, Cu must be measured.",
        Doubt = Doubt,
        Code = $"{nameof(PearliteFactor)}.{nameof(Quantity)}",
        Example = new("Mn 0.30, Si 2.5, Cu 0.30, Sn 0.005, Cr 0.04 → 2.734 (by hand)",
            () => Quantity.Value(Analysis.Of((Mn, 0.30), (Si, 2.5), (Cu, 0.30), (Sn, 0.005), (Cr, 0.04))), 2.734, 1e-9),
    };

    /// <summary>The record of the ferrite share.</summary>
    public static Formula FerriteFormula { get; } = new()
    {
        Key = "ferrite-share",
        Name = "Ferrite share",
        Sentence = "Ferrite in the matrix of a ductile iron.",
        Expression = "F = 961 · exp(−Px), held to 0 … 100",
        Symbols = [new("Px", "pearlite factor", "1")],
        Unit = "%",
        Sources = [Bibliography.Pearlite],
        Range = "Ductile iron as poured, ordinary cooling in the mould; section and nodule count are not in it.",
        Doubt = Doubt,
        Code = $"{nameof(PearliteFactor)}.{nameof(FerritePercent)}",
        Example = new("Px 2.956 → 50 (by hand)", () => FerritePercent(2.956), 50, 0.05),
    };

    /// <summary>Ferrite share of the matrix.</summary>
    /// <param name="pearliteFactor">The factor; under 2.263 all is ferrite.</param>
    /// <returns>Percent of the matrix, 0 to 100; 62.4 for 2.734.</returns>
    public static double FerritePercent(double pearliteFactor) => Math.Clamp(FerriteScale * Math.Exp(-pearliteFactor), 0, 100);

    /// <summary>The factor at which the matrix has a ferrite share: ln(961/F).</summary>
    /// <param name="ferritePercent">Ferrite, %, over 0 up to 100.</param>
    /// <returns>The factor; 2.263 for 100, 2.956 for 50, 5.259 for 5.</returns>
    public static double ForFerrite(double ferritePercent) => Math.Log(FerriteScale / ferritePercent);
}
