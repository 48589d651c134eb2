using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;

namespace MeltShop.Charging.Tests.Yards;

/// <summary>Marginal costs against what a small change really costs, on both sides.</summary>
public class MarginalCostTests
{
    // Costs are exact to a linear program, and to the planes' tolerance with scatter: there the step is wider and curvature allowed for.
    private static double StepFor(double confidence) => confidence > 50 ? 1e-3 : 1e-5;

    private static double RoomFor(double confidence) => confidence > 50 ? 2e-2 : 1e-3;

    [Theory]
    [InlineData(50, 1)]
    [InlineData(90, 101)]
    public void RandomYards_ABoundMovedALittle_CostsItsMarginalCost(double confidence, int firstSeed)
    {
        var (compared, degenerate, step, room) = (0, 0, StepFor(confidence), RoomFor(confidence));
        foreach (var seed in Enumerable.Range(firstSeed, confidence > 50 ? 12 : 40))
        {
            var problem = RandomYard.Charge(seed, confidence: confidence);
            var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);
            if (plan.Status != PlanStatus.Optimal) continue;
            for (var i = 0; i < problem.Limits.Count; i++)
            {
                var (right, left) = (Moved(problem, plan, i, step), Moved(problem, plan, i, -step));
                if (plan.Limits[i].MarginalCost is not { } marginal)
                {
                    Assert.True(right is null, $"seed {seed}, limit {i}: raising it is possible");
                    continue;
                }

                Assert.True(right is not null, $"seed {seed}, limit {i}: raising it is impossible, marginal cost {marginal}");

                // The least cost is convex in a bound: its slope lies between the changes to the left and to the right. Without scatter the
                // right one is the slope itself (breakpoints within the step would blur it: seeds are fixed, none of these has one).
                var slack = room * (1 + Math.Abs(100 * marginal));
                Assert.True(100 * marginal <= right + slack, $"seed {seed}, limit {i}: right {right}, marginal {100 * marginal}");
                Assert.True(100 * marginal >= (confidence > 50 ? left ?? double.NegativeInfinity : right.Value) - slack, $"seed {seed}, limit {i}: left {left}, right {right}, marginal {100 * marginal}");
                compared += plan.Limits[i].Binding == BindingBound.None ? 0 : 1;
                if (left is { } l && Math.Abs(l - right.Value) > 1e-2 * (1 + Math.Abs(l))) degenerate++;
            }
        }

        TestContext.Current.SendDiagnosticMessage($"{compared} binding bounds, {degenerate} with unlike sides");
        Assert.InRange(compared, confidence > 50 ? 20 : 60, int.MaxValue);
    }

    [Theory]
    [InlineData(50, 1)]
    [InlineData(90, 101)]
    public void RandomYards_ALeftOutMaterialForcedIn_CostsWhatItsPriceToEnterSays(double confidence, int firstSeed)
    {
        var compared = 0;
        foreach (var seed in Enumerable.Range(firstSeed, confidence > 50 ? 8 : 20))
        {
            var problem = RandomYard.Charge(seed, confidence: confidence);
            var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);
            if (plan.Status != PlanStatus.Optimal) continue;
            var epsilon = (confidence > 50 ? 1e-4 : 1e-6) * problem.MeltKg;
            for (var j = 0; j < problem.Materials.Count; j++)
            {
                if (plan.Materials[j].Kg > 0) continue;
                var material = problem.Materials[j];
                var (forced, half) = (Forced(problem, j, epsilon), Forced(problem, j, epsilon / 2));
                if (plan.Materials[j].PriceToEnterPerTonne is not { } price)
                {
                    Assert.True(forced.Status == PlanStatus.Infeasible, $"seed {seed}, {material.Code}: it can come in");
                    continue;
                }

                // Two steps, so that the curvature that scatter brings drops out.
                var (whole, halfway) = ((forced.TotalCost - plan.TotalCost) / epsilon, (half.TotalCost - plan.TotalCost) / (epsilon / 2));
                var expected = material.PricePerTonne - 1000 * (2 * halfway - whole);
                var slack = (confidence > 50 ? 1e-2 : 1e-3) * (1 + Math.Abs(confidence > 50 ? material.PricePerTonne - price : price));
                Assert.True(Math.Abs(price - expected) <= slack, $"seed {seed}, {material.Code}: {price}, forced {expected}");
                compared++;
            }
        }

        Assert.InRange(compared, confidence > 50 ? 50 : 100, int.MaxValue);
    }

    private static ChargePlan Forced(ChargeProblem problem, int material, double kg) => ChargeOptimiser.Plan(
        problem with { Materials = [.. problem.Materials.Select((m, k) => k == material ? m with { MinKg = kg } : m)] },
        TestContext.Current.CancellationToken);

    /// <summary>Change of cost per point when a bound is moved; both bounds where both bind.</summary>
    private static double? Moved(ChargeProblem problem, ChargePlan plan, int limit, double step)
    {
        var binding = plan.Limits[limit].Binding;
        var moved = problem.Limits[limit] with
        {
            Min = problem.Limits[limit].Min + (binding is BindingBound.Min or BindingBound.Both ? step : 0),
            Max = problem.Limits[limit].Max + (binding is BindingBound.Max or BindingBound.Both ? step : 0),
        };
        var other = ChargeOptimiser.Plan(problem with { Limits = [.. problem.Limits.Select((l, i) => i == limit ? moved : l)] });
        return other.Status == PlanStatus.Optimal ? (other.TotalCost - plan.TotalCost) / step : null;
    }
}
