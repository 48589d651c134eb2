using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

namespace MeltShop.Charging.Tests.Support;

/// <summary>
/// What clashes in one generated yard: it has to clash, nothing in it may be spared, and each member gets as near as it says. GLPK decides
/// where nothing scatters.
/// </summary>
internal static class ConflictComparison
{
    /// <summary>Number of limits that clash, 0 where there is a charge or the mass alone cannot be had; and what does not agree.</summary>
    public static async Task<(int Members, IReadOnlyList<string> Faults)> Of(int seed, double confidence, CancellationToken cancellation)
    {
        var problem = RandomYard.Charge(seed, confidence: confidence);
        var plan = ChargeOptimiser.Plan(problem, cancellation);
        if (plan.Status != PlanStatus.Infeasible || plan.Conflicts[0].Quantity == "meltKg") return (0, []);
        var faults = new List<string>();
        var members = plan.Conflicts.Select(conflict => Bound(problem, conflict, conflict.Limit!.Value)).ToList();
        await Demand(possible: false, members, "the set can be met");
        for (var k = 0; k < members.Count; k++)
        {
            var (conflict, others) = (plan.Conflicts[k], members.Where((_, i) => i != k).ToList());
            if (conflict.Nearest is not { } nearest)
            {
                faults.Add($"seed {seed}: {conflict.Quantity} has no nearest value");
                continue;
            }

            var (inward, step) = (conflict.Bound == "min" ? 1 : -1, (confidence > 50 ? 1e-4 : 1e-5) * Math.Max(1, Math.Abs(nearest)));
            await Demand(possible: true, others, $"{conflict.Quantity} can be spared");
            await Demand(possible: true, [.. others, Bound(problem, conflict, nearest - inward * step)], $"{conflict.Quantity}: {nearest} is too near");
            await Demand(possible: false, [.. others, Bound(problem, conflict, nearest + inward * step)], $"{conflict.Quantity}: {nearest} is not nearest");
            if (inward * (conflict.Limit!.Value - nearest) <= 0) faults.Add($"seed {seed}: {conflict.Quantity} is met");
        }

        return (members.Count, faults);

        async Task Demand(bool possible, IReadOnlyList<QuantityLimit> limits, string otherwise)
        {
            var asked = problem with { Limits = limits };
            var isPossible = confidence > 50
                ? ChargeOptimiser.Plan(asked, cancellation).Status == PlanStatus.Optimal
                : await Glpk.LeastCost(asked, cancellation) is not null;
            if (isPossible != possible) faults.Add($"seed {seed}: {otherwise}");
        }
    }

    private static QuantityLimit Bound(ChargeProblem problem, Conflict conflict, double value)
    {
        var limit = problem.Limits.First(l => l.Quantity.Name == conflict.Quantity && (conflict.Bound == "min" ? l.Min : l.Max) == conflict.Limit);
        return conflict.Bound == "min" ? limit with { Min = value, Max = null } : limit with { Min = null, Max = value };
    }
}
