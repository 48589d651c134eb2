using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Magnesium lost whenever treated iron is poured into another ladle.</summary>
public static class ReLadling
{
    /// <summary>Least and most that one re-ladling costs, % Mg, as printed.</summary>
    public static (double Least, double Most) LossPercent => (0.007, 0.010);

    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "re-ladling",
        Name = "Magnesium after re-ladling",
        Sentence = "What is left after treated iron was poured over.",
        Expression = "Mg = Mg₀ − n · loss, not below 0",
        Symbols = [new("Mg₀", "before", "%"), new("n", "re-ladlings", "1"), new("loss", "0.007 to 0.010", "%")],
        Unit = "%",
        Sources = [Bibliography.Fade],
        Range = "Ordinary ladles; a plan takes the larger loss.",
        Code = $"{nameof(ReLadling)}.{nameof(After)}",
        Example = new("0.045 %, once, 0.010 lost → 0.035 (printed range 0.035 to 0.038)", () => After(0.045, 1, 0.010), 0.035, 1e-9),
    };

    /// <summary>Magnesium after re-ladlings.</summary>
    /// <param name="mgPercent">Magnesium before, %.</param>
    /// <param name="times">How often, 0 or more.</param>
    /// <param name="lossPercent">Loss at each, %.</param>
    public static double After(double mgPercent, int times, double lossPercent) => Math.Max(0, mgPercent - times * lossPercent);
}
