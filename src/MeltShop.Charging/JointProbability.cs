using MeltShop.Charging.Planning;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Charging;

/// <summary>
/// How often a charge would keep its limits if the same one were melted many times with analyses drawn from their scatter. The
/// confidence of a plan is that of each bound by itself; all at once are kept more seldom.
/// </summary>
/// <param name="All">Share of the heats that keep all limits, 0 to 1.</param>
/// <param name="Each">Share that keeps each limit, in the order of the limits.</param>
/// <param name="Draws">Number of heats drawn.</param>
/// <param name="Seed">What the draws begin from: the same charge gives the same answer.</param>
public sealed record JointProbability(double All, IReadOnlyList<double> Each, int Draws, int Seed)
{
    /// <summary>What solving leaves over of a value that sits on its bound, in its unit: it is kept.</summary>
    private const double Tolerance = 1e-6;

    /// <summary>Standard error of <see cref="All"/> by the finite number of heats.</summary>
    public double StandardError => Math.Sqrt(All * (1 - All) / Draws);

    /// <summary>Draws heats of a charge. Limits are the bounds asked for, without margins; the liquid mass stays at its mean.</summary>
    /// <param name="problem">What was asked.</param>
    /// <param name="kilograms">The whole charge by code, weighed kg.</param>
    /// <param name="draws">Number of heats, 1 or more.</param>
    /// <param name="seed">What the draws begin from.</param>
    /// <exception cref="ArgumentException">A code that the problem does not hold, or a mass that is negative or not finite.</exception>
    public static JointProbability Of(ChargeProblem problem, IReadOnlyDictionary<string, double> kilograms, int draws = 20_000, int seed = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        var result = ChargeCheck.ResultOf(problem, kilograms);

        // Materials scatter independently, so that an element of the melt scatters as one normal value; limits on it share its draw.
        var elements = problem.Limits.SelectMany(l => l.Quantity.Terms.Keys).Distinct().Order().ToList();
        double[] deviations = [.. elements.Select(e => result.DeviationOf(LinearQuantity.Of(e)))];
        double[][] terms = [.. problem.Limits.Select(l => elements.Select(e => l.Quantity.Terms.GetValueOrDefault(e)).ToArray())];
        var (random, drawn, all, each) = (new Random(seed), new double[deviations.Length], 0, new int[problem.Limits.Count]);
        for (var draw = 0; draw < draws; draw++)
        {
            for (var e = 0; e < drawn.Length; e++) drawn[e] = deviations[e] > 0 ? deviations[e] * Gauss(random) : 0;
            var kept = 0;
            for (var i = 0; i < each.Length; i++)
            {
                var value = result.Values[i];
                for (var e = 0; e < drawn.Length; e++) value += terms[i][e] * drawn[e];
                if (value < problem.Limits[i].Min - Tolerance || value > problem.Limits[i].Max + Tolerance) continue;
                each[i]++;
                kept++;
            }

            if (kept == each.Length) all++;
        }

        return new((double)all / draws, [.. each.Select(n => (double)n / draws)], draws, seed);
    }

    /// <summary>A standard normal value by the method of G. E. P. Box and M. E. Muller, Annals of Mathematical Statistics 29 (1958) 610–611.</summary>
    private static double Gauss(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
