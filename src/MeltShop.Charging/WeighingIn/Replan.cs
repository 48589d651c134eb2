using MeltShop.Charging.Conflicts;
using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.WeighingIn;

/// <summary>The rest of a charge while it is weighed in: planned anew from the metal that is really there.</summary>
public static class Replan
{
    /// <summary>Less than this share of the melt is what solving leaves over, and no mass to weigh.</summary>
    private const double Nothing = 1e-9;

    /// <summary>Plans what is still to go in.</summary>
    /// <param name="problem">What was asked, with <see cref="ChargeProblem.WeighedKg"/>.</param>
    /// <param name="cancellation">Ends the call.</param>
    /// <inheritdoc cref="ChargeOptimiser.Plan" path="/exception"/>
    public static RestOfCharge Of(ChargeProblem problem, CancellationToken cancellation = default)
    {
        var melt = ChargeOptimiser.MeltOf(problem);
        return MeltPlanner.InTurn(melt, (formulation, budget) => Of(problem, formulation, budget), cancellation);
    }

    private static RestOfCharge Of(ChargeProblem problem, MeltFormulation formulation, Budget budget)
    {
        var (plan, kilograms) = MeltPlanner.Solve(formulation, budget);
        var isReachable = kilograms.Length > 0;
        var (charge, end) = isReachable
            ? (ChargeCheck.Of(new MeltResult(formulation.Melt, kilograms)), plan.End)
            : plan.Status == PlanStatus.Infeasible ? LeastHarm.Find(formulation, budget) : (null, plan.End);
        return new()
        {
            Plan = ChargeOptimiser.PerTonne(plan, problem),
            IsReachable = isReachable,
            Charge = charge,
            End = end,
            ToGo = charge is null ? [] : [.. charge.Lines.Select(l => ToGo(l, problem)).Where(l => l.ToGoKg > Nothing * problem.MeltKg)],
            StillPossible = [.. formulation.Melt.Limits.Select((_, i) => StillPossible(formulation, i, budget))],
        };
    }

    private static LineToGo ToGo(PlanLine line, ChargeProblem problem)
    {
        var weighed = problem.WeighedKg.GetValueOrDefault(line.Code);
        return new(line.Code, line.Kg, weighed, line.Kg - weighed);
    }

    /// <summary>What masses, stock and shares leave open, the other limits aside.</summary>
    private static ReachableRange StillPossible(MeltFormulation formulation, int limitIndex, Budget budget)
    {
        var limit = formulation.Melt.Limits[limitIndex];
        return new(limit.Quantity.Name, Extreme(isMax: true), Extreme(isMax: false));

        // The value nearest to below a greatest bound is the least there is, and the other way round.
        double? Extreme(bool isMax)
        {
            var bound = limit with { Min = limit.Min ?? limit.Max, Max = limit.Max ?? limit.Min };
            return NearestValue.Of(formulation, new LimitBound(limitIndex, bound, isMax), [], budget);
        }
    }
}
