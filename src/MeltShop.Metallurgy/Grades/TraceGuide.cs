using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Grades;

/// <summary>Single guide limits for tramp elements. The joint effect is <see cref="Quantities.TraceFactor"/>; keep both.</summary>
public static class TraceGuide
{
    /// <summary>Ductile iron.</summary>
    public static IReadOnlyList<GuideLimit> Ductile { get; } =
    [
        Tramp("Al", 0.03, "forms flake graphite, and pinholes with titanium in green sand"), Tramp("As", 0.01, "0.05 is tolerable in pearlitic irons"),
        Tramp("B", 0.002), Tramp("Bi", 0.002), Tramp("Cd", 0.002), Tramp("Pb", 0.002), Tramp("Sb", 0.003), Tramp("Se", 0.002), Tramp("Te", 0.002),
        Tramp("Zr", 0.01),
    ];

    /// <summary>Grey iron, as printed in one supplier's sheet: where trouble starts, no acceptance limit.</summary>
    public static IReadOnlyList<GuideLimit> Grey { get; } =
    [
        new(Element.Al, 0.03, "from about 0.005 hydrogen pinholes in thin sections", Bibliography.TraceSheet12),
        new(Element.Sb, 0.02, "strong former of pearlite and carbide", Bibliography.TraceSheet12),
        new(Element.As, 0.05, "strong former of pearlite and carbide", Bibliography.TraceSheet12),
        new(Element.Parse("Ba"), 0.003, "", Bibliography.TraceSheet12),
    ];

    /// <summary>Nitrogen in grey iron: blowholes are unlikely below; fissures start at 0.008 to 0.010 % in other sources.</summary>
    public static IReadOnlyList<GuideLimit> Nitrogen { get; } =
    [
        new(Element.N, 0.013, "light castings", Bibliography.Bcira41), new(Element.N, 0.008, "heavy castings", Bibliography.Bcira41),
    ];

    private static GuideLimit Tramp(string symbol, double most, string note = "") => new(Element.Parse(symbol), most, note, Bibliography.Mullins80);
}
