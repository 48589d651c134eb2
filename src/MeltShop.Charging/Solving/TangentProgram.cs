using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>The program of small steps away from a solution: its active rows and bounds only, with zero on their right-hand sides.</summary>
internal sealed class TangentProgram : IDisposable
{
    private readonly IReadOnlyList<Column> steps;
    private readonly List<Row> rows = [];
    private readonly List<int> places = []; // of each row in the solved program; -1 for planes that stand for none of its rows
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
            if (active.Rows[i] is { Least: true } or { Most: true }) Add(Step(solution.Solved.Rows[i], active.Rows[i].Least, active.Rows[i].Most), i);
        }

        foreach (var row in solution.Solved.Rows.Where(r => r.Scatter is not null && Math.Abs(r.Violation(solution.Values)) <= 1e-7))
        {
            if (row.ScatterAt(solution.Values) > 0) Add(Step(row.Tangent(solution.Values, $"{row.Name}, here")), -1);
        }

        // Where nothing that scatters is in the plan yet, the scatter of a step is not smooth: it stays a cone.
        cones = [.. rows.Where(r => r.Scatter is not null && r.ScatterAt(solution.Values) == 0)];
        native = new NativeProgram(steps, rows);
    }

    /// <inheritdoc cref="Sensitivity.Raising"/>
    public double? Raising(IReadOnlyCollection<LimitBound> bounds, int sign, Budget budget) =>
        Moved([.. rows.Select(r => r.Bounds.Any(bounds.Contains) ? sign * r.ShiftPerPointKg : 0)], [], budget);

    /// <inheritdoc cref="Sensitivity.Moving"/>
    public double? Moving(Nudge nudge, int sign, Budget budget) =>
        Moved([.. places.Select(i => sign * nudge.Rows.GetValueOrDefault(i))], [.. nudge.Columns.Select(c => new ColumnNudge(c.Column, sign * c.Least, sign * c.Most))], budget);

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

    private void Add(Row row, int place)
    {
        rows.Add(row);
        places.Add(place);
    }

    /// <summary>The cheapest step where rows and bounds of columns are moved; null where there is none.</summary>
    private double? Moved(List<double> shifts, IReadOnlyList<ColumnNudge> columns, Budget budget)
    {
        // A solver takes crossed bounds for a faulty model, here they are an answer.
        if (columns.Any(c => steps[c.Column].Least + c.Least > steps[c.Column].Most + c.Most)) return null;
        for (var i = 0; i < shifts.Count; i++) Shift(i, shifts[i]);
        foreach (var (column, least, most) in columns) native.BoundColumn(column, steps[column].Least + least, steps[column].Most + most);
        try
        {
            return Cheapest(shifts, budget);
        }
        finally
        {
            for (var i = 0; i < rows.Count; i++) Shift(i, 0);
            foreach (var (column, _, _) in columns) native.BoundColumn(column, steps[column].Least, steps[column].Most);
        }
    }

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
                Add(plane, -1);
                shifts.Add(ShiftOf(cone));
                native.Add(plane);
                Shift(rows.Count - 1, shifts[^1]);
            }
        }

        double ShiftOf(Row cone) => shifts[rows.IndexOf(cone)];
    }

    private static double Size(double[] step) => Math.Max(1, step.Max(Math.Abs));
}
