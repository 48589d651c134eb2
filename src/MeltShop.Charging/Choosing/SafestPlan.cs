using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Choosing;

/// <summary>
/// The plan that keeps farthest from its limits within the price. More safety never costs less, so halving finds the greatest there is: of the number of
/// standard deviations where an analysis scatters, otherwise of the room to each bound in halves of its window.
/// </summary>
internal static class SafestPlan
{
    /// <summary>One bound in thirty thousand heats: nobody knows a scatter better than that.</summary>
    private const double MostDeviations = 4;

    /// <summary>In the middle of the window.</summary>
    private const double MostRoom = 1;

    /// <summary>How much farther another plan may keep away, in deviations or halves of a window.</summary>
    private const double Closeness = 1e-4;

    /// <summary>The same with whole pieces, where each question may take seconds: a share of the farthest.</summary>
    private const double ClosenessInPieces = 1e-3;

    /// <summary>The safest plan; infeasible where none is safer than what was asked. Where a question is not decided, the safest so far without proof.</summary>
    public static Solution Find(Melt melt, Dearness dearness, Budget budget)
    {
        var scatters = melt.Limits.Any(l => melt.Columns.Any(c => c.Scatter(l.Quantity.Terms) > 0));
        var (low, high) = scatters ? (melt.Deviations, MostDeviations) : (0, MostRoom);
        if (low >= high) return Solution.Without(PlanStatus.Infeasible);
        var closeness = melt.HasPieces ? ClosenessInPieces * high : Closeness;
        var best = At(high);
        if (best.Status != PlanStatus.Infeasible) return best;
        while (high - low > closeness)
        {
            var middle = (low + high) / 2;
            var solution = At(middle);
            if (solution.IsOptimal) (best, low) = (solution, middle);
            else if (solution.Status == PlanStatus.Infeasible) high = middle;
            else return best.IsOptimal ? best with { Status = PlanStatus.TimeLimit } : solution;
        }

        return best;

        Solution At(double level)
        {
            var formulation = new MeltFormulation(scatters ? melt with { Deviations = level } : WithRoom(melt, level));
            return Undecided.OrWithout(() => ProgramSolver.Solve(dearness.Program(formulation), budget));
        }
    }

    internal static Melt WithRoom(Melt melt, double room)
    {
        var limits = melt.Limits.ToArray();
        foreach (var bound in LimitBound.Of(limits))
        {
            if (bound.Limit.Min == bound.Limit.Max) continue;
            limits[bound.LimitIndex] = bound.Limit with { Margin = Math.Max(bound.Limit.Margin, room * bound.HalfWindow) };
        }

        return melt with { Limits = limits };
    }
}
