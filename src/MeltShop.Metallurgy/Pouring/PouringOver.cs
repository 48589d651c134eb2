using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Pouring;

/// <summary>Treated iron that is poured onto other treated iron: the one that comes loses by the re-ladling, then they mix.</summary>
public static class PouringOver
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "pouring-over",
        Name = "Magnesium of iron poured over",
        Sentence = "Treated iron that is poured onto other treated iron.",
        Expression = "Mg = (m₁ · Mg₁ + m₂ · max(0, Mg₂ − loss)) / (m₁ + m₂)",
        Symbols =
        [
            new("m₁", "iron that is there", "kg"), new("Mg₁", "its magnesium then", "%"), new("m₂", "iron that comes", "kg"),
            new("Mg₂", "its magnesium before it is poured over", "%"), new("loss", "of one re-ladling, 0.007 to 0.010", "%"),
        ],
        Unit = "%",
        Sources = [Bibliography.Fade, Bibliography.Practice],
        Range = "Both mix fully. As a band: the ends of both bands, with the least or the most iron that may be there.",
        Code = $"{nameof(PouringOver)}.{nameof(MgPercent)}",
        Example = new("300 kg with 0.050 % onto 700 kg with 0.036 %, 0.010 lost (by hand)", () => MgPercent(700, 0.036, 300, 0.050, 0.010), 0.0372, 1e-12),
    };

    /// <summary>Magnesium of the mixture.</summary>
    /// <param name="insideKg">Iron that is there, kg, 0 or more.</param>
    /// <param name="insidePercent">Its magnesium, %.</param>
    /// <param name="comesKg">Iron that comes, kg, over 0.</param>
    /// <param name="comesPercent">Its magnesium before it is poured over, %.</param>
    /// <param name="lossPercent">What the re-ladling costs, %; a plan takes the most that is printed.</param>
    public static double MgPercent(double insideKg, double insidePercent, double comesKg, double comesPercent, double lossPercent) =>
        Iron(insideKg, insidePercent).Plus(Iron(comesKg, ReLadling.After(comesPercent, 1, lossPercent))).Percent(Element.Mg);

    /// <summary>
    /// The same where each is known as a band. A mixture rises with the magnesium of either part, and lies between them: its ends are at
    /// ends of the bands, with the least or the most iron that may be there.
    /// </summary>
    /// <param name="insideKg">Least and most iron that may be there, kg, 0 or more.</param>
    /// <param name="inside">Its magnesium.</param>
    /// <param name="comesKg">Iron that comes, kg, over 0.</param>
    /// <param name="comes">Its magnesium before it is poured over.</param>
    public static MagnesiumRange Range((double Least, double Most) insideKg, MagnesiumRange inside, double comesKg, MagnesiumRange comes)
    {
        ArgumentNullException.ThrowIfNull(inside);
        ArgumentNullException.ThrowIfNull(comes);
        var (least, most) = ReLadling.LossPercent;
        return new(
            Math.Min(
                MgPercent(insideKg.Least, inside.LeastPercent, comesKg, comes.LeastPercent, most),
                MgPercent(insideKg.Most, inside.LeastPercent, comesKg, comes.LeastPercent, most)),
            Math.Max(
                MgPercent(insideKg.Least, inside.MostPercent, comesKg, comes.MostPercent, least),
                MgPercent(insideKg.Most, inside.MostPercent, comesKg, comes.MostPercent, least)));
    }

    private static Metal Iron(double kg, double mgPercent) => Metal.Of(kg, Analysis.Of((Element.Mg, mgPercent)));
}

/// <summary>Magnesium that lies between two values, %.</summary>
public sealed record MagnesiumRange(double LeastPercent, double MostPercent)
{
    /// <summary>A value give or take some; iron has no magnesium below nothing.</summary>
    /// <param name="percent">The value, %.</param>
    /// <param name="plusMinus">Give or take, percentage points, 0 or more.</param>
    public static MagnesiumRange About(double percent, double plusMinus) => new(Math.Max(0, percent - plusMinus), percent + plusMinus);

    /// <summary>After so many minutes of fading.</summary>
    /// <param name="minutes">Minutes, 0 or more.</param>
    /// <param name="fastest">How the least falls.</param>
    /// <param name="slowest">How the most falls.</param>
    public MagnesiumRange After(double minutes, Fade fastest, Fade slowest)
    {
        ArgumentNullException.ThrowIfNull(fastest);
        ArgumentNullException.ThrowIfNull(slowest);
        return new(fastest.After(LeastPercent, minutes), slowest.After(MostPercent, minutes));
    }
}
