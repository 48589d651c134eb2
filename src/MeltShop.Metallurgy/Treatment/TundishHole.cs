using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Filling hole of a tundish cover.</summary>
public static class TundishHole
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "tundish-hole",
        Name = "Filling hole of a tundish cover",
        Sentence = "The hole through which an amount of iron runs in a time under a head.",
        Expression = "d = 0.07 √(W / (t √h))",
        Symbols = [new("W", "iron", "g"), new("t", "filling time", "s"), new("h", "head over the hole", "cm")],
        Unit = "cm",
        Sources = [Bibliography.Elkem10],
        Range = "Sharp-edged hole, steady head.",
        Doubt = "The root signs were lost in the extract read; they are restored from orifice flow at 6.9 g/cm³, where 0.07 is a discharge factor of 0.85.",
        Code = $"{nameof(TundishHole)}.{nameof(DiameterCm)}",
        Example = new("1000 kg in 40 s under 20 cm → 5.23 cm (by hand)", () => DiameterCm(1000, 40, 20), 5.23, 0.005),
    };

    /// <summary>Diameter of the hole.</summary>
    /// <param name="ironKg">Iron, kg.</param>
    /// <param name="seconds">Filling time, s, over 0.</param>
    /// <param name="headCm">Head, cm, over 0.</param>
    public static double DiameterCm(double ironKg, double seconds, double headCm) => 0.07 * Math.Sqrt(ironKg * 1000 / (seconds * Math.Sqrt(headCm)));
}
