using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Grades;

/// <summary>
/// Guidance for austempered ductile iron, all of it from memory: composition, bath temperatures, carbon of the austenite. A
/// hardenability figure is refused: the printed formula could not be read, and two of its signs are uncertain.
/// </summary>
public static class AustemperingGuide
{
    /// <summary>The record of the austenite carbon.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "austenite-carbon",
        Name = "Carbon of the austenite",
        Sentence = "Carbon that austenite holds at the austenitising temperature.",
        Expression = "C_γ = T/420 − 0.17 Si − 0.95",
        Symbols = [new("T", "austenitising temperature", "°C"), new("Si", "analysis", "%")],
        Unit = "%",
        Sources = [Bibliography.Voigt],
        Range = "840 to 950 °C, Si 2 to 3 %.",
        Doubt = "From memory.",
        Code = $"{nameof(AustemperingGuide)}.{nameof(AusteniteCarbonPercent)}",
        Example = new("900 °C, Si 2.5 → 0.768 (by hand)", () => AusteniteCarbonPercent(900, 2.5), 0.768, 0.0005),
    };

    /// <summary>Least and most of the elements that are aimed at: 3.60 ± 0.20 and 2.50 ± 0.20.</summary>
    public static IReadOnlyList<(Element Element, double LeastPercent, double MostPercent)> Aims { get; } = [(Element.C, 3.40, 3.80), (Element.Si, 2.30, 2.70)];

    /// <summary>Austenitising: 840 to 950 °C for 1 to 3 hours is printed in public teaching notes on ductile iron of low authority.</summary>
    public static (double LeastC, double MostC, double LeastHours, double MostHours) Austenitising => (840, 950, 1, 3);

    /// <summary>Salt bath over all grades: 250 to 400 °C for 1 to 4 hours, from the same notes.</summary>
    public static (double LeastC, double MostC, double LeastHours, double MostHours) Austempering => (250, 400, 1, 4);

    /// <summary>Most of each element. Manganese 0.35 holds over 13 mm, 0.60 under; segregation, not the average, decides.</summary>
    public static IReadOnlyList<GuideLimit> Most { get; } =
    [
        Limit("Mn", 0.35, "sections over 13 mm; 0.60 under"), Limit("Cu", 0.80), Limit("Ni", 2.00), Limit("Mo", 0.30), Limit("Sn", 0.02), Limit("Sb", 0.002),
        Limit("P", 0.04), Limit("S", 0.02), Limit("O", 0.005), Limit("Cr", 0.10), Limit("Ti", 0.040), Limit("V", 0.10), Limit("Al", 0.050), Limit("Pb", 0.002),
        Limit("B", 0.002), Limit("As", 0.020),
    ];

    /// <summary>Salt-bath temperature by grade, °C: low for strength and wear, high for ductility.</summary>
    public static IReadOnlyList<(string Grade, double LeastC, double MostC)> Baths { get; } =
    [
        ("EN-GJS-800-10", 370, 400), ("EN-GJS-900-8", 355, 375), ("EN-GJS-1050-6", 330, 350), ("EN-GJS-1200-3", 300, 325), ("EN-GJS-1400-1", 275, 300),
        ("ASTM A897M 1600-1300-01", 240, 260),
    ];

    /// <summary>Why there is no hardenability figure.</summary>
    public static Finding HardenabilityRefused { get; } = new("hardenability", "adi.noHardenability");

    /// <summary>Carbon of the austenite.</summary>
    /// <param name="austenitisingC">Austenitising temperature, °C, 840 to 950.</param>
    /// <param name="siliconPercent">Si, %.</param>
    public static double AusteniteCarbonPercent(double austenitisingC, double siliconPercent) => austenitisingC / 420 - 0.17 * siliconPercent - 0.95;

    private static GuideLimit Limit(string symbol, double most, string note = "") => new(Element.Parse(symbol), most, note, Bibliography.DuctileIronData);
}
