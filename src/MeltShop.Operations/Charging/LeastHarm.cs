using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

namespace MeltShop.Operations.Charging;

/// <summary>
/// What to do where the limits can no longer be kept: one bound after the other gives way as far as it must, each time the one of those
/// that clash whose miss is the smallest beside its own window, until a charge is there. All other limits hold.
/// </summary>
internal static class LeastHarm
{
    /// <summary>A bound without a partner counts by a tenth of itself: half a window is not known.</summary>
    private const double ShareOfLoneBound = 0.1;

    /// <summary>So that a bound that was moved to what can be reached is not missed again by rounding; far below what anybody measures.</summary>
    private const double Room = 1e-7;

    public static RestOfCharge Of(ChargeProblem asked, ChargeProblem begun, ChargePlan plan, CancellationToken cancellation)
    {
        var problem = begun;
        var mostRounds = 2 * (problem.Limits.Count + 1);
        for (var round = 0; round < mostRounds && !RestQuestion.IsThere(plan); round++)
        {
            if (Eased(problem, plan.Conflicts) is not { } eased) break;
            problem = eased;
            plan = ChargeOptimiser.Plan(problem, cancellation);
        }

        return RestQuestion.IsThere(plan) ? new(RestStanding.Missed, problem, plan, [.. Missed(asked, plan)]) : new(RestStanding.None, problem, plan, []);
    }

    private static ChargeProblem? Eased(ChargeProblem problem, IReadOnlyList<Conflict> conflicts)
    {
        if (conflicts.FirstOrDefault(clash => clash.Bound is null) is { } mass) return OtherMass(problem, mass.Nearest);
        var easiest = conflicts.Where(clash => clash.Nearest is not null).MinBy(clash => Harm(problem, clash));
        return easiest is null ? null : problem with { Limits = [.. problem.Limits.Select(limit => limit.Quantity.Name == easiest.Quantity ? Moved(limit, easiest) : limit)] };
    }

    private static ChargeProblem? OtherMass(ChargeProblem problem, double? nearestKg)
    {
        if (nearestKg is not { } kg) return null;
        var most = problem.MeltKg + problem.MeltToleranceKg;
        return kg > most
            ? problem with { MeltToleranceKg = (kg * (1 + Room)) - problem.MeltKg }
            : problem with { MeltKg = kg * (1 - Room), MeltToleranceKg = most - (kg * (1 - Room)) };
    }

    private static double Harm(ChargeProblem problem, Conflict clash)
    {
        var limit = problem.Limits.First(l => l.Quantity.Name == clash.Quantity);
        var half = limit is { Min: { } least, Max: { } most } && most > least ? (most - least) / 2 : ShareOfLoneBound * Math.Abs(clash.Limit!.Value);
        return half > 0 ? Math.Abs(clash.Nearest!.Value - clash.Limit!.Value) / half : double.MaxValue;
    }

    private static QuantityLimit Moved(QuantityLimit limit, Conflict clash) => clash.Bound == "min"
        ? limit with { Min = clash.Nearest!.Value - Room }
        : limit with { Max = clash.Nearest!.Value + Room };

    private static IEnumerable<MissedLimit> Missed(ChargeProblem asked, ChargePlan plan)
    {
        const double tolerance = 1e-6;
        foreach (var limit in asked.Limits)
        {
            var value = plan.Limits.First(outcome => outcome.Quantity == limit.Quantity.Name).Value;
            if (value < limit.Min - tolerance) yield return new(limit.Quantity.Name, false, limit.Min!.Value, value);
            if (value > limit.Max + tolerance) yield return new(limit.Quantity.Name, true, limit.Max!.Value, value);
        }
    }
}
