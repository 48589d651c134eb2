using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>
/// Whole pieces without proof, where branch and bound came to no end: from the continuous solution down, one number after the other is made whole, to the
/// nearer side or else to the other, the masses beside it solved anew. What it costs more than the continuous solution is the gap.
/// </summary>
internal static class Dive
{
    /// <summary>Time that is kept for it.</summary>
    public static readonly TimeSpan Time = TimeSpan.FromSeconds(2);

    private const double WholeEnough = 1e-7;

    /// <summary>A solution with whole numbers, or one that has only the continuous solution beside it.</summary>
    /// <param name="program">The program with its whole columns.</param>
    /// <param name="relaxed">Its solution as if there were none.</param>
    /// <param name="end">Why the dive is needed.</param>
    /// <param name="budget">Time for it.</param>
    public static Solution Find(LinearProgram program, Solution relaxed, SearchEnd end, Budget budget)
    {
        var without = Solution.Without(PlanStatus.TimeLimit) with { End = end };
        if (!relaxed.IsOptimal) return without;
        without = without with { Continuous = relaxed.Values[..program.Columns.Count], Bound = program.Cost(relaxed.Values[..program.Columns.Count]) };
        var (columns, solution) = (program.Columns.Select(c => c with { Whole = false }).ToArray(), relaxed);
        var open = Enumerable.Range(0, columns.Length).Where(j => program.Columns[j].Whole).ToHashSet();
        while (open.Count > 0)
        {
            var next = open.MinBy(j => Math.Abs(solution.Values[j] - Math.Round(solution.Values[j])));
            open.Remove(next);
            var (near, far) = Sides(solution.Values[next]);
            if ((Fixed(next, near) ?? Fixed(next, far)) is not { } deeper) return without;
            solution = deeper;
        }

        return solution with { Status = PlanStatus.TimeLimit, End = end, Bound = without.Bound };

        Solution? Fixed(int column, double value)
        {
            var before = columns[column];
            if (value < before.Least || value > before.Most) return null;
            columns[column] = before with { Least = value, Most = value };
            var found = Undecided.OrWithout(() => ProgramSolver.Continuous(program with { Columns = columns }, budget));
            if (found.IsOptimal) return found;
            columns[column] = before;
            return null;
        }
    }

    private static (double Near, double Far) Sides(double value)
    {
        var near = Math.Round(value);
        return (near, Math.Abs(value - near) < WholeEnough || value < near ? near - 1 : near + 1);
    }
}
