using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>
/// The scatter of a row split by material: √Σ(w·x)² ≤ t holds where some s ≥ (w·x)²/t sum to t. Each material then has planes of
/// its own, which close in on the cone all at once instead of one direction at a time. Source of the idea: J. P. Vielma, I. Dunning, J. Huchette,
/// M. Lubin, "Extended formulations in mixed integer conic quadratic programming", Mathematical Programming Computation 9 (2017) 369–418.
/// </summary>
internal sealed class SplitCones
{
    private const int MostRounds = 200;

    private readonly LinearProgram program;
    private readonly List<Column> columns;
    private readonly List<Row> rows;
    private readonly List<Cone> cones = [];

    private SplitCones(LinearProgram program, double[] from)
    {
        this.program = program;
        columns = [.. program.Columns];
        foreach (var row in program.Rows.Where(r => r.Scatter is not null)) cones.Add(Split(row, from));
        rows = [.. program.Rows.Select(r => r.Scatter is null ? Row(r.Name, r.Coefficients, [], r.Least, r.Most) with { Bounds = r.Bounds, ShiftPerPointKg = r.ShiftPerPointKg, Asked = r.Asked } : Whole(r))];
        rows.AddRange(cones.Select(c => Row($"{c.Row.Name}, shares", [], [(c.Total, -1), .. c.Parts.Select(p => (p.Square, 1.0))], double.NegativeInfinity, 0)));
    }

    /// <param name="program">The program with its cones.</param>
    /// <param name="from">Where planes alone have come to.</param>
    /// <param name="budget">Time for it.</param>
    /// <param name="exact">
    /// Makes a point on the cones themselves of one that is near, where it can. What planes end with misses them by the tolerance; where a row has room for a hair only that is much in
    /// money, and more in prices.
    /// </param>
    public static Solution Solve(LinearProgram program, double[] from, Budget budget, Func<Solution, Solution?> exact)
    {
        var split = new SplitCones(program, from);
        split.rows.AddRange(split.cones.SelectMany(c => Planes(split, c, from, 0)));
        using var native = new NativeProgram(split.columns, split.rows);
        for (var round = 1; round <= MostRounds; round++)
        {
            var status = native.Solve(budget);
            if (status != PlanStatus.Optimal) return Solution.Without(status);
            var values = native.Values();
            var here = values[..program.Columns.Count];
            // Each row of the program has its place here, and so its price.
            if (exact(new(PlanStatus.Optimal, program, here, native.Duals()[..program.Rows.Count], native.ReducedCosts()[..program.Columns.Count])) is { } found) return found;
            var missed = split.cones.Where(c => c.Row.Violation(here) > ProgramSolver.Tolerance).ToList();
            if (missed.Count == 0) return new(PlanStatus.Optimal, new(split.columns, split.rows), values, native.Duals(), native.ReducedCosts());
            foreach (var plane in missed.SelectMany(c => Planes(split, c, here, round)).ToList())
            {
                native.Add(plane);
                split.rows.Add(plane);
            }
        }

        return Solution.Without(PlanStatus.TimeLimit) with { End = SearchEnd.Undecided };
    }

    private static IEnumerable<Row> Planes(SplitCones split, Cone cone, double[] at, int round)
    {
        var size = cone.Row.ScatterAt(at) / cone.Unit;
        if (size == 0) yield break;
        foreach (var (column, square, weight) in cone.Parts)
        {
            var slope = weight * at[column] / size;
            yield return split.Row(
                $"{cone.Row.Name}, {split.columns[column].Name}, plane {round}", [], [(square, 1), (column, -2 * slope * weight), (cone.Total, slope * slope)], 0, double.PositiveInfinity);
        }
    }

    /// <summary>The new columns are measured in the scatter that there is about now, so that they are about 1 too.</summary>
    private Cone Split(Row row, double[] from)
    {
        var unit = row.ScatterAt(from) is > 0 and var size ? size : row.Scatter!.Max();
        var total = Column($"{row.Name}, scatter");
        return new(row, unit, total, [.. Enumerable.Range(0, program.Columns.Count).Where(j => row.Scatter![j] > 0)
            .Select(j => (j, Column($"{row.Name}, scatter of {program.Columns[j].Name}"), row.Scatter![j] / unit))]);
    }

    private int Column(string name)
    {
        columns.Add(new(name, 0, 0, double.PositiveInfinity));
        return columns.Count - 1;
    }

    private Row Whole(Row row)
    {
        var cone = cones.Single(c => c.Row == row);
        return Row(row.Name, row.Coefficients, [(cone.Total, double.IsFinite(row.Least) ? -cone.Unit : cone.Unit)], row.Least, row.Most) with { Bounds = row.Bounds, ShiftPerPointKg = row.ShiftPerPointKg };
    }

    private Row Row(string name, double[] first, (int Column, double Coefficient)[] others, double least, double most)
    {
        var coefficients = new double[columns.Count];
        first.CopyTo(coefficients, 0);
        foreach (var (column, coefficient) in others) coefficients[column] += coefficient;
        return new(name, coefficients, least, most);
    }

    private sealed record Cone(Row Row, double Unit, int Total, (int Column, int Square, double Weight)[] Parts);
}
