using MeltShop.Charging;
using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;
using MeltShop.Charging.Tests.Support;

namespace MeltShop.Long;

/// <summary>
/// Whole plans (marginal costs, prices to enter, re-evaluation and all) against the bare solver on the same matrix, and plans with confidence against plain
/// ones of the same yard.
/// </summary>
internal static class PlanBenchmark
{
    public static bool Run()
    {
        ChargeOptimiser.WarmUp();
        var small = Yard(materials: 25, leastLimits: 8, confidence: 50);
        var large = Yards.WithMoreLimits(Yard(materials: 80, leastLimits: 8, confidence: 50), 30);
        var scattered = Yard(materials: 25, leastLimits: 8, confidence: 95);
        var plain = Against("25 materials, 8 elements", 1000, () => Bare(small), () => ChargeOptimiser.Plan(small));
        var wide = Against("80 materials, 30 quantities", 300, () => Bare(large), () => ChargeOptimiser.Plan(large));
        var confident = Against("95 % confidence against the plain plan", 300, () => ChargeOptimiser.Plan(scattered with { ConfidencePercent = 50 }), () => ChargeOptimiser.Plan(scattered));
        return Told("plain", plain, 3) & Told("80 × 30", wide, 3) & Told("confidence", confident, 10);
    }

    private static double Against(string what, int rounds, Action bare, Action plan)
    {
        var (floor, mine) = Timing.OfBoth(rounds, bare, plan);
        Console.WriteLine($"{what}: floor {floor}, plan {mine}; ratio {mine.Median / floor.Median:F2} at the median, {mine.P95 / floor.P95:F2} at p95");
        return mine.Median / floor.Median;
    }

    private static bool Told(string what, double ratio, double bar)
    {
        if (ratio > bar) Console.WriteLine($"{what}: over the bar of {bar}");
        return ratio <= bar;
    }

    /// <summary>The first seed with a possible yard of that size.</summary>
    private static ChargeProblem Yard(int materials, int leastLimits, double confidence)
    {
        for (var seed = 1; ; seed++)
        {
            var problem = RandomYard.Charge(seed, confidence: confidence);
            if (problem.Materials.Count != materials || problem.Limits.Count < leastLimits) continue;
            if (ChargeOptimiser.Plan(problem).Status == PlanStatus.Optimal) return problem;
        }
    }

    private static void Bare(ChargeProblem problem)
    {
        var (columns, rows) = Yards.Matrix(problem);
        using var native = new NativeProgram(columns, rows);
        native.Solve(new Budget(TimeSpan.FromSeconds(10), CancellationToken.None));
        native.Values();
    }
}
