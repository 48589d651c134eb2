using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Heat;

/// <summary>Temperature loss of a standing ladle, scaled from one that was measured.</summary>
public static class LadleLoss
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "ladle-loss",
        Name = "Temperature loss of a ladle",
        Sentence = "What a hot ladle of another size loses per minute, as surface goes with volume.",
        Expression = "r = r_ref (M_ref/M)^(1/3)",
        Symbols = [new("r_ref", "loss of the measured ladle", "K/min"), new("M_ref, M", "iron in the measured ladle, in this one", "kg")],
        Unit = "K/min",
        Sources = [Bibliography.LadleLosses],
        Range = "Ladles of one shape, equally hot and equally covered. A cold first fill loses 50 to 100 K more (from memory).",
        Doubt = "The two printed points (2 K/min at 4 t, 2.5 at 1 t) are good cases with different ladles; the scaling gives 3.2 at 1 t. Use your own readings.",
        Code = $"{nameof(LadleLoss)}.{nameof(KPerMinute)}",
        Example = new("2 K/min at 4 t → 3.17 K/min at 1 t (by hand)", () => KPerMinute(2, 4000, 1000), 3.175, 0.005),
    };

    /// <summary>Loss of a ladle of another size.</summary>
    /// <param name="referenceKPerMinute">Loss of the measured ladle, K/min.</param>
    /// <param name="referenceKg">Iron in the measured ladle, kg, over 0.</param>
    /// <param name="ironKg">Iron in this ladle, kg, over 0.</param>
    public static double KPerMinute(double referenceKPerMinute, double referenceKg, double ironKg) =>
        referenceKPerMinute * Math.Cbrt(referenceKg / ironKg);
}
