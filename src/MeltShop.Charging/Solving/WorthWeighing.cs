using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>
/// Materials that are left out or come with a mass that is worth weighing. Branch and bound: a material that came out below its least is left out
/// in one branch and comes with its least in the other. A few continuous programs decide it, exactly; big numbers beside switches of a
/// mixed program would let a gram through.
/// </summary>
internal static class WorthWeighing
{
    /// <summary>In the unit of a column: what the solver takes for zero.</summary>
    private const double Nothing = 1e-10;

    /// <summary>The best solution; where none keeps to the least masses, the best one without them.</summary>
    public static Solution Solve(LinearProgram program, Melt melt, Budget budget)
    {
        var free = ProgramSolver.Solve(program, budget);
        if (!free.IsOptimal || !melt.HasLeastIfUsed) return free;
        var least = melt.Columns.Select(c => (c.LeastIfUsedKg ?? 0) / melt.UnitKg(c)).ToArray();
        Solution? best = null;
        var open = new Stack<(LinearProgram Program, Solution Solution)>([(program, free)]);
        while (open.TryPop(out var node))
        {
            if (best is not null && program.Cost(node.Solution.Values) >= program.Cost(best.Values)) continue;
            var small = Small(node.Solution.Values, least);
            if (small < 0)
            {
                best = node.Solution;
                continue;
            }

            // Left out is looked at first: it comes off the stack first.
            foreach (var branch in new[] { Bounded(node.Program, small, c => c with { Least = Math.Max(c.Least, least[small]) }), Bounded(node.Program, small, c => c with { Most = 0 }) })
            {
                var solution = ProgramSolver.Solve(branch, budget);
                if (solution.IsOptimal) open.Push((branch, solution));
                else if (solution.Status != PlanStatus.Infeasible) return best is null ? solution : best with { Status = PlanStatus.TimeLimit, End = SearchEnd.OutOfTime };
            }
        }

        return best ?? free;
    }

    /// <summary>The first column that is used with less than its least; -1 where there is none.</summary>
    private static int Small(double[] values, double[] least) =>
        Enumerable.Range(0, least.Length).FirstOrDefault(j => values[j] > Nothing && values[j] < least[j] - Nothing, -1);

    private static LinearProgram Bounded(LinearProgram program, int column, Func<Column, Column> bound) =>
        program with { Columns = [.. program.Columns.Select((c, j) => j == column ? bound(c) : c)] };
}
