using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;
using MeltShop.Charging.Tests.Support;

namespace MeltShop.Long;

/// <summary>
/// Whole plans (marginal costs, prices to enter, re-evaluation and all) against the bare solver on the same matrix, and plans with confidence against plain
/// ones of the same yard, everything that a plan reports included on both sides. Ratios are those of the medians, yard by yard: the middle yard says what is
/// usual, the worst one is held to the bar too where confidence is.
/// </summary>
internal static class PlanBenchmark
{
    public static bool Run()
    {
        ChargeOptimiser.WarmUp();
        var small = Possible(23..27, leastLimits: 8, count: 9);
        var large = Possible(76..80, leastLimits: 8, count: 5).Select(p => Yards.WithMoreLimits(Plain(p), 30)).ToList();

        // What is compiled in steps is measured when it is whole.
        foreach (var problem in small.Concat(large).SelectMany(p => Enumerable.Repeat(p, 100))) ChargeOptimiser.Plan(problem);
        var plain = Against("25 materials, 8 elements, against the bare solver", 300, small, p => Bare(Plain(p)), p => ChargeOptimiser.Plan(Plain(p)));
        var wide = Against("80 materials, 30 quantities, against the bare solver", 100, large, Bare, p => ChargeOptimiser.Plan(p));
        var confident = Against("95 % confidence against the plain plan", 100, small, p => ChargeOptimiser.Plan(Plain(p)), p => ChargeOptimiser.Plan(p));
        var surest = Against("99 % confidence against the plain plan", 100, [.. small.Where(p => ChargeOptimiser.Plan(Sure(p)).Status == PlanStatus.Optimal)], p => ChargeOptimiser.Plan(Plain(p)), p => ChargeOptimiser.Plan(Sure(p)));
        return Told("plain", plain.Middle, 3) & Told("80 × 30", wide.Middle, 3) & Told("confidence", confident.Worst, 10) & Told("99 % confidence", surest.Middle, 10);
    }

    private static (double Middle, double Worst) Against(string what, int rounds, List<ChargeProblem> yards, Action<ChargeProblem> floor, Action<ChargeProblem> plan)
    {
        var (ratios, all) = (new List<double>(), new List<Timing>());
        foreach (var problem in yards)
        {
            var (bare, mine) = Timing.OfBoth(rounds, () => floor(problem), () => plan(problem));
            ratios.Add(mine.Median / bare.Median);
            all.Add(mine);
        }

        ratios.Sort();
        var (middle, worst) = (ratios[ratios.Count / 2], ratios[^1]);
        Console.WriteLine($"{what}: {yards.Count} yards; ratio {middle:F2} in the middle, {worst:F2} at worst; plan median {Middle(all, t => t.Median):F3} ms, p95 {Middle(all, t => t.P95):F3} ms, worst p95 {all.Max(t => t.P95):F3} ms");
        return (middle, worst);
    }

    private static double Middle(List<Timing> timings, Func<Timing, double> of) => timings.Select(of).Order().ElementAt(timings.Count / 2);

    private static bool Told(string what, double ratio, double bar)
    {
        if (ratio > bar) Console.WriteLine($"{what}: over the bar of {bar}");
        return ratio <= bar;
    }

    /// <summary>The first seeds with a possible yard of that size, at 95 %.</summary>
    private static List<ChargeProblem> Possible(Range materials, int leastLimits, int count) =>
    [
        .. Enumerable.Range(1, int.MaxValue).Select(seed => RandomYard.Charge(seed, confidence: 95))
            .Where(p => p.Materials.Count >= materials.Start.Value && p.Materials.Count <= materials.End.Value && p.Limits.Count >= leastLimits)
            .Where(p => ChargeOptimiser.Plan(p).Status == PlanStatus.Optimal && ChargeOptimiser.Plan(Plain(p)).Status == PlanStatus.Optimal).Take(count),
    ];

    private static ChargeProblem Plain(ChargeProblem problem) => problem with { ConfidencePercent = 50 };

    private static ChargeProblem Sure(ChargeProblem problem) => problem with { ConfidencePercent = 99 };

    private static void Bare(ChargeProblem problem)
    {
        var (columns, rows) = Yards.Matrix(problem);
        using var native = new NativeProgram(columns, rows);
        native.Solve(new Budget(TimeSpan.FromSeconds(10), CancellationToken.None));
        native.Values();
    }
}
