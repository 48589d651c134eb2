using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Chain;

namespace MeltShop.Charging.Tests.Properties;

/// <summary>What holds for every yard. The yards are drawn from a fixed seed: the same ones in every run.</summary>
public class PlanPropertyTests
{
    private const int Seed = 20261125;
    private const int Yards = 60;

    [Fact]
    public void LooserLimit_OfAnyYard_NeverCostsMore() => Holds(confidence: 50, (problem, plan, random) =>
    {
        var k = random % problem.Limits.Count;
        var looser = problem.Limits[k] with { Min = problem.Limits[k].Min - 0.01, Max = problem.Limits[k].Max + 0.01 };
        return Cost(problem with { Limits = [.. problem.Limits.Select((l, i) => i == k ? looser : l)] }) <= plan.TotalCost + 1e-7 * Math.Abs(plan.TotalCost);
    });

    [Fact]
    public void LessConfidence_OfAnyYard_NeverCostsMore() => Holds(confidence: 80, (problem, plan, _) =>
        Cost(problem with { ConfidencePercent = 60 }) <= plan.TotalCost + 1e-7 * Math.Abs(plan.TotalCost));

    [Fact]
    public void Order_OfMaterialsAndLimits_DoesNotMatter() => Holds(confidence: 50, (problem, plan, _) =>
        Same(plan.TotalCost, Cost(problem with { Materials = [.. problem.Materials.Reverse()], Limits = [.. problem.Limits.Reverse()] })));

    [Fact]
    public void Scale_OfTheFurnace_ScalesTheCost() => Holds(confidence: 70, (problem, plan, _) =>
        Same(1000 * plan.TotalCost, Cost(Scaled(problem, 1000))) && Same(plan.TotalCost / 1000, Cost(Scaled(problem, 0.001))));

    [Fact]
    public void Shares_OfAPlan_SumToTheWhole() => Holds(confidence: 50, (_, plan, _) =>
        Math.Abs(plan.Lines.Sum(l => l.Percent) - 100) < 1e-9 && plan.Lines.All(l => l.Kg > 0));

    private static void Holds(double confidence, Func<ChargeProblem, ChargePlan, int, bool> law)
    {
        TestContext.Current.TestOutputHelper?.WriteLine($"seed {Seed}, {Yards} yards");
        var random = new Random(Seed);
        foreach (var yard in Enumerable.Range(0, Yards).Select(_ => random.Next(1000, 1_000_000)))
        {
            var problem = RandomYard.Charge(yard, confidence: confidence);
            var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);
            Assert.True(plan.Status == PlanStatus.Infeasible || law(problem, plan, yard), $"yard {yard}");
        }
    }

    private static double Cost(ChargeProblem problem)
    {
        var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);
        return plan.Status == PlanStatus.Optimal ? plan.TotalCost : double.NaN;
    }

    private static bool Same(double one, double other) => Math.Abs(one - other) <= 1e-7 * Math.Abs(one);

    private static ChargeProblem Scaled(ChargeProblem problem, double by) => problem with
    {
        MeltKg = by * problem.MeltKg,
        MeltToleranceKg = by * problem.MeltToleranceKg,
        Heel = Metal.Of(by * problem.Heel.Kg, problem.Heel.Analysis),
        Materials = [.. problem.Materials.Select(m => m with { AvailableKg = by * m.AvailableKg, MinKg = by * m.MinKg, MaxKg = by * m.MaxKg })],
    };
}
