using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Statistics;

/// <summary>Grubbs' test for one outlier, two-sided.</summary>
public static class Grubbs
{
    /// <summary>Fewest readings for which the test is offered: of three, none can lie more than 1.1547 standard deviations off.</summary>
    public const int FewestReadings = 4;

    /// <summary>The record of the critical value.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "grubbs",
        Name = "Grubbs' critical value",
        Sentence = "The distance from the mean, in standard deviations, beyond which the farthest reading is no chance.",
        Expression = "G = (n − 1)/√n · √(t²/(n − 2 + t²)), t = upper quantile α/(2n) of Student's t with n − 2",
        Symbols = [new("n", "readings", "1"), new("α", "level, two-sided", "1")],
        Unit = "1",
        Sources = [Bibliography.Grubbs],
        Range = "n of 4 or more, one outlier suspected, readings otherwise normal.",
        Doubt = "A widely used table (D. Harvey, Analytical Chemistry 2.1, appendix 7) prints 2.202 for n = 7 at 5 % and 2.755 for n = 15 at 1 %; "
            + "the formula gives 2.020 and 2.806, and the table's own neighbours agree with the formula.",
        Code = $"{nameof(Grubbs)}.{nameof(Critical)}",
        Example = new("n = 7 at 5 % → 2.020 (Grubbs and Beck, table)", () => Critical(7, 0.05), 2.020, 0.0005),
    };

    /// <summary>Critical value of the two-sided test.</summary>
    /// <param name="readings">Readings, 3 or more (3 for the arithmetic; see <see cref="FewestReadings"/>).</param>
    /// <param name="level">Level α, over 0 and under 1: 0.05 or 0.01.</param>
    /// <returns>Standard deviations; 1.481 for 4 readings at 0.05.</returns>
    public static double Critical(int readings, double level)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(readings, 3);
        var t = readings == 3 ? UpperQuantileOfOne(level / 6) : StudentT.UpperQuantile(level / (2 * readings), readings - 2);
        return (readings - 1) / Math.Sqrt(readings) * Math.Sqrt(t * t / (readings - 2 + t * t));
    }

    // With one degree of freedom Student's t is Cauchy's distribution, whose quantile is a tangent.
    private static double UpperQuantileOfOne(double tail) => 1 / Math.Tan(Math.PI * tail);
}
