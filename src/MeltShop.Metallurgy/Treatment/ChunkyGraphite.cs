using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Antimony against chunky graphite in the thermal centre of heavy ductile castings, where rare earths bring it about.</summary>
public static class ChunkyGraphite
{
    /// <summary>Antimony for each part of rare earths that suppressed it; the one good point that was published.</summary>
    public const double AntimonyPerRareEarth = 0.8;

    /// <summary>Antimony that was tried beside none, % of the iron; the most of it was worse than none.</summary>
    public static (double Least, double Most) TriedAntimonyPercent => (0.005, 0.02);

    /// <summary>Sections over this, mm, are those in whose middle it was seen (J. D. Mullins, Sorelmetal Suggestion Sheet 93).</summary>
    public const double HeavySectionMm = 50;

    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "chunky-graphite",
        Name = "Antimony against chunky graphite",
        Sentence = "Antimony that stands against the rare earths in a heavy section.",
        Expression = "Sb = 0.8 · RE",
        Symbols = [new("RE", "cerium, lanthanum and other rare earths in the poured iron, together", "%")],
        Unit = "%",
        Sources = [Bibliography.Shin2005],
        Range = "Cubes of 250 mm, ferritic iron of eutectic composition, antimony 0, 0.005 and 0.02 %. A point, no band: more brings flake graphite and pearlite and is worse than none.",
        Code = $"{nameof(ChunkyGraphite)}.{nameof(AntimonyPercent)}",
        Example = new("RE 0.010 % → Sb 0.008 %, inside what was tried (by hand from the printed ratio)", () => AntimonyPercent(0.010), 0.008, 1e-12),
    };

    /// <summary>Antimony that stands against rare earths.</summary>
    /// <param name="rareEarthPercent">Rare earths in the poured iron, %, 0 or more.</param>
    /// <returns>Antimony, %.</returns>
    public static double AntimonyPercent(double rareEarthPercent) => AntimonyPerRareEarth * rareEarthPercent;

    /// <summary>Rare earths of an iron, %: cerium and lanthanum as far as they are known; null where neither is.</summary>
    public static double? RareEarthPercent(Analysis iron)
    {
        ArgumentNullException.ThrowIfNull(iron);
        return iron.Has(Element.Ce) || iron.Has(Element.La) ? iron.OrZero(Element.Ce) + iron.OrZero(Element.La) : null;
    }

    /// <summary>True where an addition of antimony lies within what was tried.</summary>
    public static bool IsTried(double antimonyPercent) => antimonyPercent >= TriedAntimonyPercent.Least && antimonyPercent <= TriedAntimonyPercent.Most;
}
