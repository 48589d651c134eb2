using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.WeighingIn;

/// <summary>
/// What to do when the limits cannot all be kept: the charge that misses them by the least in all, and the cheapest of those. A miss counts by its
/// size: one percent of the melt in mass, five points of a share, half a window (a tenth of a single bound) times the limit's weight are the same
/// harm.
/// </summary>
public static class LeastHarm
{
    /// <summary>The charge with what it misses; null where none was found.</summary>
    /// <inheritdoc cref="ChargeOptimiser.Plan" path="/exception"/>
    public static ChargeEvaluation? Plan(ChargeProblem problem, CancellationToken cancellation = default)
    {
        var melt = ChargeOptimiser.MeltOf(problem);
        return MeltPlanner.InTurn(melt, (formulation, budget) => Find(formulation, budget).Charge, cancellation);
    }

    internal static (ChargeEvaluation? Charge, SearchEnd End) Find(MeltFormulation formulation, Budget budget)
    {
        // First the harm, then the money with the harm held where it is (to what the solver can tell).
        var elastic = ElasticProgram.Of(formulation);
        var priced = elastic.Priced([.. formulation.Columns.Select(c => c.Cost)]);
        var solution = Undecided.OrWithout(() => InOrder.Solve(priced, [.. elastic.Columns.Select(c => c.Cost)], budget));
        return (solution.Values.Length == 0 ? null : ChargeCheck.Of(new MeltResult(formulation.Melt, formulation.Kilograms(solution.Values, elastic.Columns))), solution.End);
    }
}
