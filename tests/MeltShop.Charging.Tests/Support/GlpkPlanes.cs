using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Charging.Tests.Support;

/// <summary>
/// Bounds under confidence for GLPK: mean ∓ z × standard deviation, by the contract's formula, times the liquid mass. A charge that misses one is cut off by the
/// plane that touches the cone above it.
/// </summary>
internal static class GlpkPlanes
{
    /// <summary>What GLPK's own tolerances leave over, percentage points.</summary>
    private const double Tolerance = 1e-8;

    public static IEnumerable<(double[] Coefficients, string Sense, double Right)> Missed(ChargeProblem problem, double[] kilograms)
    {
        if (problem.ConfidencePercent <= 50) yield break;
        var z = Normal.Quantile(problem.ConfidencePercent / 100);
        var liquidKg = problem.Heel.Kg + problem.Materials.Zip(kilograms).Sum(m => Glpk.Liquid(m.First) * m.Second);
        foreach (var limit in problem.Limits)
        {
            double[] variances = [.. problem.Materials.Select(m => Variance(limit, m))];
            var deviation = Math.Sqrt(variances.Zip(kilograms).Sum(v => v.First * v.Second * v.Second));
            if (deviation == 0) continue;
            foreach (var (bound, sense, sign) in new[] { (limit.Min, ">=", -1), (limit.Max, "<=", 1) })
            {
                if (bound is not { } asked) continue;
                var (coefficients, right) = Glpk.Limit(problem, limit, asked);
                var missed = sign * (coefficients.Zip(kilograms).Sum(c => c.First * c.Second) - right) + z * deviation;
                if (missed > Tolerance * liquidKg) yield return ([.. coefficients.Select((c, j) => c + sign * z * variances[j] * kilograms[j] / deviation)], sense, right);
            }
        }
    }

    /// <summary>Variance of a quantity's mass by a kilogram of a material, (percent × kg)².</summary>
    private static double Variance(QuantityLimit limit, ChargeMaterial material) => limit.Quantity.Terms.Sum(term =>
    {
        var composition = material.Composition;
        var part = term.Value * composition.MetallicYieldPercent / 100 * composition.Recovery(term.Key) / 100 * material.SpreadPercent.GetValueOrDefault(term.Key);
        return part * part;
    });
}
