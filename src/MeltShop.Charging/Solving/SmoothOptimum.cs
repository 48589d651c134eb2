using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>
/// Where planes show which rows and bounds hold, Newton's method finds the point on the cones themselves: cost = Σ multiplier · gradient of the rows that hold, and
/// those rows kept exactly (J. Nocedal, S. J. Wright, "Numerical Optimization", 2nd edition, Springer 2006, section 18.1). The program is convex: a point that
/// keeps every row and whose multipliers have the right signs is the cheapest (there, section 12.3), so that a wrong guess costs time and nothing else.
/// </summary>
internal static class SmoothOptimum
{
    private const int MostSteps = 8;

    /// <summary>A step as short as this ends the search: the next one would be about its square.</summary>
    private const double ShortStep = 1e-8;

    /// <summary>How far a price may be on the wrong side of zero; costs are about 1.</summary>
    private const double SignTolerance = 1e-9;

    /// <summary>The cheapest point, with a plane where it touches each cone; null where the guess is wrong or the point is not smooth.</summary>
    /// <param name="program">The program with its cones.</param>
    /// <param name="near">The solution of the program with planes in place of its cones.</param>
    /// <param name="budget">Time for it.</param>
    public static Solution? Near(LinearProgram program, Solution near, Budget budget)
    {
        var held = new HeldRows(program, near);
        var (values, multipliers) = (near.Values.ToArray(), held.Multipliers);
        foreach (var (column, least, _) in held.Bounds) values[column] = least ? program.Columns[column].Least : program.Columns[column].Most;
        for (var step = 1; step <= MostSteps; step++)
        {
            // The tip of a cone has no gradient.
            if (held.Rows.Any(r => r.Row.Scatter is not null && r.Row.ScatterAt(values) == 0)) return null;
            if (held.Step(values, multipliers) is not var (moves, prices)) return null;
            for (var k = 0; k < moves.Length; k++) values[held.Free[k]] += moves[k];
            multipliers = prices;
            if (step > 1 && moves.All(m => Math.Abs(m) <= ShortStep)) return Proven(program, held, values, multipliers, budget);
        }

        return null;
    }

    private static Solution? Proven(LinearProgram program, HeldRows held, double[] values, double[] multipliers, Budget budget)
    {
        if (held.Free.Any(j => !(values[j] >= program.Columns[j].Least && values[j] <= program.Columns[j].Most))) return null;
        if (!program.Rows.All(r => r.Violation(values) <= ProgramSolver.Tolerance)) return null;
        Row[] touching = [.. held.All.Select(r => r.Row.Scatter is null ? r.Row : r.Row.Tangent(values, $"{r.Row.Name}, here"))];
        double[] prices = [.. held.All.Select(r => held.Rows.Zip(multipliers).Where(m => m.First == r).Sum(m => m.Second))];
        double[] reduced = [.. program.Columns.Select((c, j) => c.Cost - touching.Zip(prices).Sum(r => r.Second * r.First.Coefficients[j]))];
        var planes = program with { Rows = [.. program.Rows, .. touching.Where(r => r.PlaneOf is not null)] };
        if (held.All.Zip(prices).Any(r => IsWrong(r.Second, r.First.Least, r.First.Most)) || held.Bounds.Any(b => IsWrong(reduced[b.Column], b.Least, b.Most)))
            return held.All.Count == held.Rows.Count ? null : ProvenByPlanes(program, planes, values, budget);

        foreach (var j in held.Free) reduced[j] = 0;
        double[] duals = [.. planes.Rows.Select(r => Array.FindIndex(touching, t => ReferenceEquals(t, r)) is >= 0 and var i ? prices[i] : 0)];
        return new(PlanStatus.Optimal, planes, values, duals, reduced)
        {
            // Those that were held are independent; where one more holds there are several sets of prices.
            PricesAreUnique = program.Rows.Count(r => r.Violation(values) >= -ProgramSolver.Tolerance) == held.Rows.Count,
        };
    }

    /// <summary>Where prices are one choice of many, those that were told may have wrong signs and others not. The planes leave out nothing that is possible: if they allow nothing cheaper, nothing is.</summary>
    private static Solution? ProvenByPlanes(LinearProgram program, LinearProgram planes, double[] values, Budget budget)
    {
        using var native = new NativeProgram(planes.Columns, planes.Rows);
        var isProven = native.Solve(budget) == PlanStatus.Optimal && program.Cost(native.Values()) >= program.Cost(values) - ProgramSolver.Tolerance;
        return isProven ? new(PlanStatus.Optimal, planes, values, native.Duals(), native.ReducedCosts()) : null;
    }

    /// <summary>To raise a lower bound can only make dearer, an upper one only cheaper; where both hold it may do either.</summary>
    private static bool IsWrong(double price, bool isLeast, bool isMost) => !isLeast && price > SignTolerance || !isMost && price < -SignTolerance;
}
