using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>The program of small steps away from a solution: its active rows and bounds only, with zero on their right-hand sides.</summary>
internal sealed class TangentProgram : IDisposable
{
    private readonly IReadOnlyList<Column> steps;
    private readonly List<Row> rows = [];
    private readonly Row[] cones;
    private readonly NativeProgram native;

    public TangentProgram(Solution solution, ActiveSet active)
    {
        steps = [.. solution.Solved.Columns.Select((c, j) => c with
        {
            Least = active.Columns[j].Least ? 0 : double.NegativeInfinity,
            Most = active.Columns[j].Most ? 0 : double.PositiveInfinity,
        })];
        for (var i = 0; i < solution.Solved.Rows.Count; i++)
        {
            if (active.Rows[i] is { Least: true } or { Most: true }) rows.Add(Step(solution.Solved.Rows[i], active.Rows[i].Least, active.Rows[i].Most));
        }

        foreach (var row in solution.Solved.Rows.Where(r => r.Scatter is not null && Math.Abs(r.Violation(solution.Values)) <= 1e-7))
        {
            if (row.ScatterAt(solution.Values) > 0) rows.Add(Step(row.Tangent(solution.Values, $"{row.Name}, here")));
        }

        // Where nothing that scatters is in the plan yet, the scatter of a step is not smooth: it stays a cone.
        cones = [.. rows.Where(r => r.Scatter is not null && r.ScatterAt(solution.Values) == 0)];
        native = new NativeProgram(steps, rows);
    }

    /// <inheritdoc cref="Sensitivity.Raising"/>
    public double? Raising(IReadOnlyCollection<LimitBound> bounds, Budget budget)
    {
        var moved = Enumerable.Range(0, rows.Count).Where(i => rows[i].Bounds.Any(bounds.Contains)).ToList();
        var shifts = rows.Select((r, i) => moved.Contains(i) ? r.ShiftPerPointKg : 0).ToList();
        for (var i = 0; i < shifts.Count; i++) Shift(i, shifts[i]);
        try
        {
            return Cheapest(shifts, budget);
        }
        finally
        {
            for (var i = 0; i < rows.Count; i++) Shift(i, 0);
        }
    }

    /// <summary>Change of the objective for the first of a column more, or less; null where it cannot move that way.</summary>
    public double? Forcing(int column, Budget budget, int sign = 1)
    {
        if (sign > 0 ? steps[column].Most == 0 : steps[column].Least == 0) return null;
        native.BoundColumn(column, sign > 0 ? 1 : double.NegativeInfinity, sign > 0 ? double.PositiveInfinity : -1);
        try
        {
            return Cheapest([.. rows.Select(_ => 0.0)], budget);
        }
        finally
        {
            native.BoundColumn(column, steps[column].Least, steps[column].Most);
        }
    }

    public void Dispose() => native.Dispose();

    private static Row Step(Row row, bool least = true, bool most = true) => row with
    {
        Least = least && double.IsFinite(row.Least) ? 0 : double.NegativeInfinity,
        Most = most && double.IsFinite(row.Most) ? 0 : double.PositiveInfinity,
    };

    private void Shift(int row, double by) => native.Bound(row, rows[row].Least + by, rows[row].Most + by);

    private double? Cheapest(List<double> shifts, Budget budget)
    {
        while (true)
        {
            if (native.Solve(budget) != PlanStatus.Optimal) return null;
            var step = native.Values();
            var missed = cones.Where(c => (c with { Least = c.Least + ShiftOf(c), Most = c.Most + ShiftOf(c) }).Violation(step) > 1e-7 * Size(step)).ToList();
            if (missed.Count == 0) return steps.Select((s, j) => s.Cost * step[j]).Sum();
            foreach (var cone in missed)
            {
                var plane = cone.Tangent(step, $"{cone.Name}, step {rows.Count}");
                rows.Add(plane);
                shifts.Add(ShiftOf(cone));
                native.Add(plane);
                Shift(rows.Count - 1, shifts[^1]);
            }
        }

        double ShiftOf(Row cone) => shifts[rows.IndexOf(cone)];
    }

    private static double Size(double[] step) => Math.Max(1, step.Max(Math.Abs));
}
