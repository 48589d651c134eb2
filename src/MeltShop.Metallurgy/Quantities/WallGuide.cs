using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>
/// Carbon and silicon of ductile iron by wall thickness, and graphite flotation. A customer's specification goes before it.
/// </summary>
public static class WallGuide
{
    /// <summary>Room over the table's carbon equivalent before flotation is warned of, % (this app's own choice, no source).</summary>
    public const double FlotationMargin = 0.15;

    /// <summary>Where the table comes from. The last two rows of its ferritic columns could not be read whole and are left out.</summary>
    public static Source Source => Bibliography.Mullins84;

    /// <summary>The pearlitic columns. The row 6–37 mm prints CE 4.32 where C + Si/3 is 4.37.</summary>
    public static IReadOnlyList<WallRow> Rows { get; } =
    [
        new(3, 3, 3.90, 2.90, 4.87), new(3, 6, 3.85, 2.85, 4.80), new(3, 12, 3.80, 2.80, 4.73), new(3, 18, 3.75, 2.70, 4.65),
        new(6, 6, 3.85, 2.65, 4.73), new(6, 12, 3.75, 2.60, 4.62), new(6, 25, 3.65, 2.55, 4.50), new(6, 37, 3.55, 2.45, 4.32),
        new(12, 12, 3.70, 2.45, 4.52), new(12, 25, 3.60, 2.40, 4.40), new(12, 50, 3.50, 2.40, 4.30), new(12, 62, 3.50, 2.35, 4.28),
        new(25, 25, 3.60, 2.35, 4.38), new(25, 50, 3.50, 2.35, 4.28), new(25, 75, 3.50, 2.25, 4.25),
        new(50, 50, 3.45, 2.20, 4.18), new(50, 75, 3.40, 2.20, 4.13), new(50, 100, 3.40, 2.15, 4.12),
        new(75, 75, 3.40, 2.20, 4.13), new(75, 100, 3.40, 2.15, 4.13), new(100, 100, 3.40, 2.15, 4.12),
    ];

    /// <summary>The ferritic columns; silicon of 75–100 and 100–100 mm could not be read. Which row is which was rebuilt from flat text.</summary>
    public static IReadOnlyList<WallRow> FerriticRows { get; } =
    [
        new(3, 3, 3.90, 2.95), new(3, 6, 3.85, 2.95), new(3, 12, 3.80, 2.90), new(3, 18, 3.75, 2.85),
        new(6, 6, 3.85, 2.85), new(6, 12, 3.75, 2.75), new(6, 25, 3.65, 2.70), new(6, 37, 3.60, 2.65),
        new(12, 12, 3.70, 2.60), new(12, 25, 3.60, 2.55), new(12, 50, 3.50, 2.50), new(12, 62, 3.45, 2.50),
        new(25, 25, 3.55, 2.50), new(25, 50, 3.45, 2.50), new(25, 75, 3.45, 2.40),
        new(50, 50, 3.40, 2.35), new(50, 75, 3.40, 2.35), new(50, 100, 3.35, 2.25), new(75, 75, 3.35, 2.35),
    ];

    /// <summary>The narrowest row that holds a casting's walls; null where the table has none.</summary>
    /// <param name="thinnestMm">Thinnest wall, mm.</param>
    /// <param name="thickestMm">Thickest wall, mm.</param>
    /// <param name="isFerritic">True for the ferritic columns, false for the pearlitic.</param>
    public static WallRow? For(double thinnestMm, double thickestMm, bool isFerritic = false) =>
        (isFerritic ? FerriticRows : Rows).Where(r => r.FromMm <= thinnestMm && thickestMm <= r.ToMm).OrderBy(r => r.ToMm - r.FromMm).FirstOrDefault();

    /// <summary>Carbon equivalent (C + Si/3) above which graphite may float, %: the table's for the thickest wall and a margin; null beyond 100 mm.</summary>
    /// <param name="thickestMm">Thickest wall, mm.</param>
    public static double? FlotationLimit(double thickestMm) =>
        Rows.Where(r => r.FromMm == r.ToMm && r.ToMm >= thickestMm).OrderBy(r => r.ToMm).FirstOrDefault() is { } row
            ? row.CarbonPercent + row.SiliconPercent / 3 + FlotationMargin
            : null;

    /// <summary>Warns of graphite flotation in the thickest wall of a casting.</summary>
    /// <param name="poured">Analysis of the poured iron.</param>
    /// <param name="thickestMm">Thickest wall, mm, over 0.</param>
    /// <returns>
    /// <c>wall.flotation</c> (C + Si/3, limit, wall); <c>quantity.needs</c> where C or Si was not measured; <c>wall.noTable</c> (wall, thickest of the
    /// table) where the table ends before; null where nothing speaks for flotation.
    /// </returns>
    public static Finding? Flotation(Analysis poured, double thickestMm)
    {
        ArgumentNullException.ThrowIfNull(poured);
        var missing = new[] { Element.C, Element.Si }.Where(e => !poured.Has(e)).ToArray();
        if (missing.Length > 0) return new("flotation", "quantity.needs", string.Join(", ", missing.AsEnumerable()));
        if (FlotationLimit(thickestMm) is not { } limit) return new("flotation", "wall.noTable", thickestMm, Rows.Max(r => r.ToMm));
        var equivalent = poured.OrZero(Element.C) + poured.OrZero(Element.Si) / 3;
        return equivalent > limit ? new("flotation", "wall.flotation", equivalent, limit, thickestMm) : null;
    }
}
