using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>Solves a program; rows with scatter by planes that cut off what misses the cone, until nothing does or they show where the cones hold.</summary>
internal static class ProgramSolver
{
    /// <summary>A row is met to this, in its own scale.</summary>
    public const double Tolerance = 1e-9;

    /// <summary>Two or three rounds are usual. Where many materials share the scatter the planes creep, and a finer form takes over.</summary>
    private const int MostRounds = 12;

    public static Solution Solve(LinearProgram program, Budget budget)
    {
        // A solver takes crossed bounds for a faulty model, here they are an answer: the stock is below the compulsory mass.
        if (program.Columns.Any(c => c.Least > c.Most)) return Solution.Without(PlanStatus.Infeasible);
        return program.HasWholeColumns ? PieceSolver.Solve(program, budget) : Continuous(program, budget);
    }

    public static Solution Continuous(LinearProgram program, Budget budget)
    {
        var rows = program.Rows.ToList();
        var hasCones = rows.Any(r => r.Scatter is not null);
        using var native = new NativeProgram(program.Columns, rows);
        for (var round = 0; ; round++)
        {
            var status = native.Solve(budget);
            if (status != PlanStatus.Optimal) return Solution.Without(status);
            var values = native.Values();
            var planes = Planes(program.Rows, values, round);
            var found = new Solution(PlanStatus.Optimal, program with { Rows = rows }, values, native.Duals(), native.ReducedCosts());
            (Solution? Exact, double[]? Reached) smooth = hasCones && (round > 0 || planes.Count == 0) ? SmoothOptimum.Search(program, found, budget) : (null, null);
            if (smooth.Exact is { } exact) return exact with { Rounds = round + 1 };
            if (planes.Count == 0) return found with { Rounds = round + 1 };
            if (round == MostRounds) return SplitCones.Solve(program, values, budget, near => SmoothOptimum.Near(program, near, budget));
            if (smooth.Reached is { } reached) planes.AddRange(Planes(program.Rows, reached, round, -Tolerance));
            foreach (var plane in planes) native.Add(plane);
            rows = [.. rows, .. planes];
        }
    }

    public static List<Row> Planes(IReadOnlyList<Row> rows, double[] values, int round, double tolerance = Tolerance) =>
        [.. rows.Where(r => r.Scatter is not null && r.Violation(values) > tolerance).Select(r => r.Tangent(values, $"{r.Name}, plane {round + 1}"))];
}
