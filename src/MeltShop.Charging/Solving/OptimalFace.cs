using MeltShop.Charging.Formulation;

namespace MeltShop.Charging.Solving;

/// <summary>All solutions of equal cost: rows and bounds with a price stay where they are, the others may move.</summary>
internal static class OptimalFace
{
    private const double Tolerance = 1e-9;

    /// <summary>Least and greatest value of a linear function over the solutions of equal cost.</summary>
    public static (double Least, double Most) Range(Solution solution, double[] function, Budget budget)
    {
        var here = function.Zip(solution.Values).Sum(p => p.First * p.Second);
        var active = new ActiveSet(solution);
        var moves = solution.Solved.Columns.Where((_, j) => active.Columns[j] is { Least: true } or { Most: true } && IsFree(solution.ReducedCosts[j])).Any()
            || solution.Solved.Rows.Where((_, i) => active.Rows[i] is { Least: true } or { Most: true } && IsFree(solution.Duals[i])).Any();
        if (!moves) return (here, here);

        var rows = solution.Solved.Rows.Select((r, i) => IsFree(solution.Duals[i]) ? r : r with { Least = r.Activity(solution.Values), Most = r.Activity(solution.Values) }).ToList();
        return (Extreme(1), Extreme(-1));

        double Extreme(int sign)
        {
            var columns = solution.Solved.Columns.Select((c, j) => IsFree(solution.ReducedCosts[j])
                ? c with { Cost = sign * function.ElementAtOrDefault(j) }
                : c with { Cost = sign * function.ElementAtOrDefault(j), Least = solution.Values[j], Most = solution.Values[j] });
            var extreme = ProgramSolver.Solve(new([.. columns], rows), budget);
            return extreme.IsOptimal ? function.Zip(extreme.Values).Sum(p => p.First * p.Second) : here;
        }
    }

    private static bool IsFree(double price) => Math.Abs(price) <= Tolerance;
}
