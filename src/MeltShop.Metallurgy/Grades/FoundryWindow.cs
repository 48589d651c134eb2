using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Grades;

/// <summary>The chemistry one foundry published for a grade: an example to start a window of one's own from, asked for by no standard.</summary>
/// <param name="Grade">Designation.</param>
/// <param name="Percents">Least and most by element, %; null where there is none.</param>
/// <param name="ManganeseAndCopper">Least and most of Mn + Cu, %; null where the sum is not given.</param>
/// <param name="Note">What disagrees in the print; null where nothing does.</param>
public sealed record FoundryWindow(
    string Grade,
    IReadOnlyDictionary<Element, (double? Least, double? Most)> Percents,
    (double? Least, double? Most)? ManganeseAndCopper = null,
    string? Note = null)
{
    /// <summary>Where the windows of the European grades come from.</summary>
    public static Source Source => Bibliography.FoundryData;

    /// <summary>Where the windows of the Japanese grades come from.</summary>
    public static Source JapaneseSource => Bibliography.JapaneseGrades;

    /// <summary>The windows: ductile grades as poured, then grey.</summary>
    public static IReadOnlyList<FoundryWindow> All { get; } =
    [
        Ductile("EN-GJS-400-15", (3.55, 3.80), (2.60, 2.80), (null, 0.2), (null, 0.10), (null, 0.30)),
        Ductile("EN-GJS-500-7", (3.50, 3.70), (2.50, 2.70), (0.20, 0.40), (0.15, 0.30), (0.30, 0.60)),
        Ductile("EN-GJS-600-3", (3.40, 3.70), (2.40, 2.65), (0.25, 0.40), (0.15, 0.35), (0.60, 0.80)),
        Ductile("EN-GJS-700-2", (3.40, 3.70), (2.40, 2.65), (0.25, 0.40), (0.15, 0.40), (0.80, 1.25),
            "The sum of manganese and copper can only be met with both at their most."),
        Grey("EN-GJL-200", (3.30, 3.60), (2.00, 2.30), (0.35, 0.55)),
        Grey("EN-GJL-250", (3.20, 3.45), (1.90, 2.10), (0.65, 0.80), ("Cr", 0.10, 0.25)),
        Grey("EN-GJL-300", (3.20, 3.40), (1.85, 2.10), (0.70, 1.00), ("Cr", 0.20, 0.30), ("Sn", 0.08, 0.10)),
        Grey("EN-GJL-350", (3.10, 3.10), (1.80, 2.00), (0.80, 1.00), ("Cr", 0.30, 0.40), ("Mo", 0.5, 0.7)),
        Japanese("FCD400", (3.6, 3.8), (2.6, 2.8), (null, 0.3), 0.05),
        Japanese("FCD500", (3.5, 3.6), (2.5, 2.7), (null, 0.4), 0.05, ("Cr", 0.10)),
        Japanese("FCD600", (3.40, 3.55), (2.2, 2.4), (0.4, 0.6), 0.06, ("Cr", 0.15), ("Mo", 0.30)),
        Japanese("FCD700", (3.35, 3.5), (2.1, 2.2), (null, 0.5), 0.06, ("Cr", 0.15), ("Mo", 0.40)),
        Japanese("FCD800", (3.3, 3.4), (2.0, 2.1), (null, 0.5), 0.06, ("Cr", 0.15), ("Mo", 0.40)),
    ];

    /// <summary>The window published for a grade; null where there is none.</summary>
    public static FoundryWindow? For(string grade) => All.FirstOrDefault(w => w.Grade == grade);

    private static FoundryWindow Ductile(
        string grade, (double? Least, double? Most) carbon, (double? Least, double? Most) silicon, (double? Least, double? Most) manganese,
        (double? Least, double? Most) copper, (double? Least, double? Most) sum, string? note = null) => new(
            grade,
            new Dictionary<Element, (double? Least, double? Most)>
            {
                [Element.C] = carbon, [Element.Si] = silicon, [Element.Mn] = manganese, [Element.Cu] = copper,
                [Element.P] = (null, 0.08), [Element.S] = (null, 0.016),
                [Element.Mg] = (0.035, 0.06), [Element.Cr] = (null, 0.05), [Element.Ni] = (null, 0.2), [Element.Al] = (null, 0.01), [Element.Pb] = (null, 0.01),
            },
            sum, note);

    // Magnesium is printed as "0.04-0.55" for FCD600 to FCD800, plainly a slip for 0.055.
    private static FoundryWindow Japanese(
        string grade, (double? Least, double? Most) carbon, (double? Least, double? Most) silicon, (double? Least, double? Most) manganese, double phosphorus,
        params (string Symbol, double Most)[] others)
    {
        var percents = new Dictionary<Element, (double? Least, double? Most)>
        {
            [Element.C] = carbon, [Element.Si] = silicon, [Element.Mn] = manganese, [Element.P] = (null, phosphorus), [Element.S] = (null, 0.02),
        };
        if (others.Length > 1) percents[Element.Mg] = (0.04, 0.055);
        foreach (var (symbol, most) in others) percents[Element.Parse(symbol)] = (null, most);
        return new(grade, percents);
    }

    private static FoundryWindow Grey(
        string grade, (double? Least, double? Most) carbon, (double? Least, double? Most) silicon, (double? Least, double? Most) manganese,
        params (string Symbol, double Least, double Most)[] alloy)
    {
        var percents = new Dictionary<Element, (double? Least, double? Most)>
        {
            [Element.C] = carbon, [Element.Si] = silicon, [Element.Mn] = manganese, [Element.S] = (null, 0.1),
        };
        foreach (var (symbol, least, most) in alloy) percents[Element.Parse(symbol)] = (least, most);
        return new(grade, percents);
    }
}
