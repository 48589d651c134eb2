using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;

namespace MeltShop.Charging.Tests.Yards;

/// <summary>What clashes has to clash, and nothing in it may be spared. GLPK decides where nothing scatters.</summary>
public class ConflictTests
{
    [Fact]
    public async Task RandomYards_ThatAreImpossible_NameAnIrreducibleSetAndHowNearEachGets()
    {
        var (sets, largest) = (0, 0);
        foreach (var seed in Enumerable.Range(1, 60))
        {
            var problem = RandomYard.Charge(seed);
            var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);
            if (plan.Status != PlanStatus.Infeasible || plan.Conflicts[0].Quantity == "meltKg") continue;
            sets++;
            largest = Math.Max(largest, plan.Conflicts.Count);
            await RequireIrreducible(seed, problem, plan, p => Glpk.LeastCost(p, TestContext.Current.CancellationToken));
        }

        Assert.InRange(sets, 3, int.MaxValue);
        Assert.InRange(largest, 2, int.MaxValue);
    }

    [Fact]
    public async Task RandomYards_ThatScatterTooMuch_NameAnIrreducibleSet()
    {
        var sets = 0;
        foreach (var seed in Enumerable.Range(201, 12))
        {
            var problem = RandomYard.Charge(seed, confidence: 99);
            var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);
            if (plan.Status != PlanStatus.Infeasible || plan.Conflicts[0].Quantity == "meltKg") continue;
            sets++;
            await RequireIrreducible(seed, problem, plan, p => Task.FromResult(ChargeOptimiser.Plan(p, TestContext.Current.CancellationToken) is { Status: PlanStatus.Optimal } found ? found.TotalCost : (double?)null));
        }

        Assert.InRange(sets, 3, int.MaxValue);
    }

    private static async Task RequireIrreducible(int seed, ChargeProblem problem, ChargePlan plan, Func<ChargeProblem, Task<double?>> cost)
    {
        var members = plan.Conflicts.Select(c => Bound(problem, c, c.Limit!.Value)).ToList();
        Assert.True(await cost(problem with { Limits = members }) is null, $"seed {seed}: the set can be met");
        for (var k = 0; k < members.Count; k++)
        {
            var others = members.Where((_, i) => i != k).ToList();
            Assert.True(await cost(problem with { Limits = others }) is not null, $"seed {seed}: member {k} can be spared");
            var nearest = plan.Conflicts[k].Nearest!.Value;
            var (inward, step) = (plan.Conflicts[k].Bound == "min" ? 1 : -1, (problem.ConfidencePercent > 50 ? 1e-4 : 1e-5) * Math.Max(1, Math.Abs(nearest)));
            Assert.True(inward * (plan.Conflicts[k].Limit!.Value - nearest) > 0, $"seed {seed}: member {k} is met");
            Assert.True(await cost(problem with { Limits = [.. others, Bound(problem, plan.Conflicts[k], nearest - inward * step)] }) is not null, $"seed {seed}: {nearest} is too near");
            Assert.True(await cost(problem with { Limits = [.. others, Bound(problem, plan.Conflicts[k], nearest + inward * step)] }) is null, $"seed {seed}: {nearest} is not nearest");
        }
    }

    private static QuantityLimit Bound(ChargeProblem problem, Conflict conflict, double value)
    {
        var limit = problem.Limits.First(l => l.Quantity.Name == conflict.Quantity && (conflict.Bound == "min" ? l.Min : l.Max) == conflict.Limit);
        return conflict.Bound == "min" ? limit with { Min = value, Max = null } : limit with { Min = null, Max = value };
    }
}
