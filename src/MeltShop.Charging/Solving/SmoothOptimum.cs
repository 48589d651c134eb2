using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>
/// Where planes show which rows and bounds hold, Newton's method finds the point on the cones themselves: cost = Σ multiplier · gradient of the rows that hold, and
/// those rows kept exactly (J. Nocedal, S. J. Wright, "Numerical Optimization", 2nd edition, Springer 2006, section 18.1). The program is convex: a point that
/// keeps every row and whose multipliers have the right signs is the cheapest (there, section 12.3), so that a wrong guess costs time and nothing else. Where it leads says what is
/// wrong with it, and a step costs a tenth of a round of planes: a guess is mended as active-set methods do (there, section 16.5) before planes have to give another.
/// </summary>
internal static class SmoothOptimum
{
    private const int MostSteps = 8;

    /// <summary>How often a guess is mended before planes have to give a better one. Two are usual.</summary>
    private const int MostGuesses = 6;

    /// <summary>A step as short as this ends the search: the next one would be about its square.</summary>
    private const double ShortStep = 1e-8;

    /// <summary>A step as long as this leads nowhere: columns are about 1, or some hundreds of pieces.</summary>
    private const double LongStep = 1e6;

    /// <summary>The cheapest point, with a plane where it touches each cone; null where the guess is wrong or the point is not smooth.</summary>
    /// <inheritdoc cref="Search"/>
    public static Solution? Near(LinearProgram program, Solution near, Budget budget) => Search(program, near, budget).Exact;

    /// <summary>The same, and where the search ended: planes that touch the cones there say more than those of where it began.</summary>
    /// <param name="program">The program with its cones.</param>
    /// <param name="near">The solution of the program with planes in place of its cones.</param>
    /// <param name="budget">Time for it.</param>
    public static (Solution? Exact, double[] Reached) Search(LinearProgram program, Solution near, Budget budget)
    {
        var values = near.Values.ToArray();
        var held = new HeldRows(program, near);
        for (var guess = 1; guess <= MostGuesses; guess++)
        {
            if (Follow(program, held, values) is not { } multipliers) break;
            if (Proven(program, held, values, multipliers, budget) is { } proven) return (proven, values);
            if (held.Mended(values, multipliers) is not { } mended) break;
            held = mended;
        }

        return (null, values);
    }

    /// <summary>Moves the values to where the held rows lead, and gives what those cost there; null where they lead nowhere.</summary>
    private static double[]? Follow(LinearProgram program, HeldRows held, double[] values)
    {
        var multipliers = held.Multipliers;
        foreach (var (column, least, _) in held.Bounds) values[column] = least ? program.Columns[column].Least : program.Columns[column].Most;
        for (var step = 1; step <= MostSteps; step++)
        {
            // The tip of a cone has no gradient.
            if (held.Rows.Any(r => r.Row.Scatter is not null && r.Row.ScatterAt(values) == 0)) return null;
            if (held.Step(values, multipliers) is not var (moves, prices) || !moves.All(m => Math.Abs(m) <= LongStep)) return null;
            for (var k = 0; k < moves.Length; k++) values[held.Free[k]] += moves[k];
            multipliers = prices;
            if (step > 1 && moves.All(m => Math.Abs(m) <= ShortStep)) return multipliers;
        }

        return null;
    }

    private static Solution? Proven(LinearProgram program, HeldRows held, double[] values, double[] multipliers, Budget budget)
    {
        if (held.Free.Any(j => !(values[j] >= program.Columns[j].Least && values[j] <= program.Columns[j].Most))) return null;
        if (!program.Rows.All(r => r.Violation(values) <= ProgramSolver.Tolerance)) return null;
        Row[] touching = [.. held.All.Select(r => r.Row.Scatter is null ? r.Row : r.Row.Tangent(values, $"{r.Row.Name}, here"))];
        double[] prices = [.. held.All.Select(r => held.Rows.Zip(multipliers).Where(m => m.First == r).Sum(m => m.Second))];
        var reduced = held.ReducedCosts(values, multipliers);
        var planes = program with { Rows = [.. program.Rows, .. touching.Where(r => r.PlaneOf is not null)] };
        if (held.All.Zip(prices).Any(r => HeldRows.IsWrong(r.Second, r.First.Least, r.First.Most)) || held.Bounds.Any(b => HeldRows.IsWrong(reduced[b.Column], b.Least, b.Most)))
            return held.All.Count == held.Rows.Count ? null : ProvenByPlanes(program, planes, values, budget);

        foreach (var j in held.Free) reduced[j] = 0;
        double[] duals = [.. planes.Rows.Select(r => Array.FindIndex(touching, t => ReferenceEquals(t, r)) is >= 0 and var i ? prices[i] : 0)];
        return new(PlanStatus.Optimal, planes, values, duals, reduced)
        {
            // Those that were held are independent; where one more holds, or a bound of a column that they hold there, there are several sets of prices.
            PricesAreUnique = program.Rows.Count(r => r.Violation(values) >= -ProgramSolver.Tolerance) == held.Rows.Count && held.Free.All(j => IsBetween(values[j], program.Columns[j])),
        };
    }

    /// <summary>Where prices are one choice of many, those that were told may have wrong signs and others not. The planes leave out nothing that is possible: if they allow nothing cheaper, nothing is.</summary>
    private static Solution? ProvenByPlanes(LinearProgram program, LinearProgram planes, double[] values, Budget budget)
    {
        using var native = new NativeProgram(planes.Columns, planes.Rows);
        try
        {
            var isProven = native.Solve(budget) == PlanStatus.Optimal && program.Cost(native.Values()) >= program.Cost(values) - ProgramSolver.Tolerance;
            return isProven ? new(PlanStatus.Optimal, planes, values, native.Duals(), native.ReducedCosts()) : null;
        }
        catch (UndecidedException)
        {
            // A guess that cannot be told right is a wrong one.
            return null;
        }
    }

    private static bool IsBetween(double value, Column column) => value > column.Least + ProgramSolver.Tolerance && value < column.Most - ProgramSolver.Tolerance;
}
