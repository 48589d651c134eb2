using MathNet.Numerics.Distributions;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Statistics;

/// <summary>
/// How the scatter of a stable process fits between its limits. Near a natural zero (P, S, low Mg) the scatter is skewed and these
/// indices say little; the spectrometer's own scatter is in them.
/// </summary>
public static class Capability
{
    /// <summary>Results below which an index should not be shown to anybody outside (customary).</summary>
    public const int FewestForReport = 50;

    /// <summary>The record of the potential.</summary>
    public static Formula PotentialFormula { get; } = new()
    {
        Key = "capability-potential",
        Name = "Capability, spread",
        Sentence = "Width of the limits over the width of the process.",
        Expression = "Cp = (U − L)/(6 s), interval by χ² of n − 1",
        Symbols = [new("L, U", "limits", "%"), new("s", "standard deviation", "%"), new("n", "results", "1")],
        Unit = "1",
        Sources = [Bibliography.Nist],
        Range = "Stable process, near normal, 50 results or more.",
        Code = $"{nameof(Capability)}.{nameof(Spread)}",
        Example = new("limits 8 and 20, s 2 → 1.0 (NIST/SEMATECH)", () => Spread(8, 20, 2, 50).Value, 1.0, 1e-9),
    };

    /// <summary>The record of the index.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "capability",
        Name = "Capability",
        Sentence = "Distance of the mean from the nearer limit over half the width of the process; 1.33 is customary.",
        Expression = "Cpk = min(U − m, m − L)/(3 s) ± 1.96 √(1/(9 n) + Cpk²/(2 (n − 1)))",
        Symbols = [new("L, U", "limits, one may be missing", "%"), new("m, s", "mean and standard deviation", "%"), new("n", "results", "1")],
        Unit = "1",
        Sources = [Bibliography.Nist, Bibliography.Bissell],
        Range = "Stable process, near normal, 50 results or more.",
        Code = $"{nameof(Capability)}.{nameof(NearerLimit)}",
        Example = new("limits 8 and 20, mean 16, s 2 → 0.6667 (NIST/SEMATECH)", () => NearerLimit(8, 20, 16, 2, 50)!.Value, 0.6667, 0.00005),
    };

    /// <summary>Width of the limits over the width of the process.</summary>
    /// <param name="lower">Lower limit.</param>
    /// <param name="upper">Upper limit.</param>
    /// <param name="standardDeviation">Standard deviation, over 0.</param>
    /// <param name="results">Results it rests on, 2 or more.</param>
    public static CapabilityIndex Spread(double lower, double upper, double standardDeviation, int results)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(results, 2);
        var index = (upper - lower) / (6 * standardDeviation);
        return new(index, index * Factor(0.025), index * Factor(0.975));

        double Factor(double probability) => Math.Sqrt(ChiSquared.InvCDF(results - 1, probability) / (results - 1));
    }

    /// <summary>Distance of the mean from the nearer limit over half the width of the process.</summary>
    /// <param name="lower">Lower limit; null where there is none.</param>
    /// <param name="upper">Upper limit; null where there is none.</param>
    /// <param name="mean">Mean.</param>
    /// <param name="standardDeviation">Standard deviation, over 0.</param>
    /// <param name="results">Results it rests on, 2 or more.</param>
    /// <returns>The index; null without any limit.</returns>
    public static CapabilityIndex? NearerLimit(double? lower, double? upper, double mean, double standardDeviation, int results)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(results, 2);
        if (lower is null && upper is null) return null;
        var index = Math.Min(upper - mean ?? double.PositiveInfinity, mean - lower ?? double.PositiveInfinity) / (3 * standardDeviation);
        var half = Normal.Quantile(0.975) * Math.Sqrt(1.0 / (9 * results) + index * index / (2 * (results - 1)));
        return new(index, index - half, index + half);
    }
}
