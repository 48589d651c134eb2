using MathNet.Numerics.LinearAlgebra;
using MeltShop.Charging.Formulation;

namespace MeltShop.Charging.Solving;

/// <summary>A row that holds a solution where it is, and the side on which it does.</summary>
internal sealed record HeldRow(Row Row, bool Least, bool Most)
{
    /// <summary>A scatter term is taken off before a lower bound and added before an upper one.</summary>
    public int Sign => Least ? -1 : 1;

    /// <summary>By how much the row is away from its bound, scatter included.</summary>
    public double Short(double[] values) => (Least ? Row.Least : Row.Most) - Row.Activity(values) - Sign * Row.ScatterAt(values);
}

/// <summary>The rows that a solution with planes sits on, cones among them, and the columns that sit on no bound there.</summary>
internal sealed class HeldRows
{
    /// <summary>A pivot smaller than this, beside the largest, says that the rows are not independent.</summary>
    private const double Dependent = 1e-9;

    private readonly double[] costs;

    public HeldRows(LinearProgram program, Solution near)
    {
        var active = new ActiveSet(near);
        costs = [.. program.Columns.Select(c => c.Cost)];
        Free = [.. Enumerable.Range(0, costs.Length).Where(j => active.Columns[j] is { Least: false, Most: false })];
        Bounds = [.. Enumerable.Range(0, costs.Length).Except(Free).Select(j => (j, active.Columns[j].Least, active.Columns[j].Most))];
        Rows = [.. program.Rows.Select((r, i) => Held(r, active.Rows[i], near.Values)).OfType<HeldRow>()];
        Multipliers = [.. Rows.Select(h => near.Solved.Rows.Zip(near.Duals).Where(r => ReferenceEquals(r.First, h.Row) || ReferenceEquals(r.First.PlaneOf, h.Row)).Sum(r => r.Second))];
    }

    public int[] Free { get; }

    public (int Column, bool Least, bool Most)[] Bounds { get; }

    public IReadOnlyList<HeldRow> Rows { get; }

    /// <summary>What each of the rows costs, as far as the planes know.</summary>
    public double[] Multipliers { get; }

    /// <summary>A step of Newton's method for the columns that are free, and the multipliers after it; null where the rows leave several.</summary>
    public (double[] Moves, double[] Multipliers)? Step(double[] values, double[] multipliers)
    {
        var (free, size) = (Free.Length, Free.Length + Rows.Count);
        if (size == 0) return ([], []);
        var (matrix, right) = (new double[size, size], new double[size]);
        for (var k = 0; k < free; k++) right[k] = -costs[Free[k]];
        for (var i = 0; i < Rows.Count; i++)
        {
            var gradient = Rows[i].Row.Scatter is null ? Rows[i].Row.Coefficients : Rows[i].Row.Tangent(values, "").Coefficients;
            right[free + i] = Rows[i].Short(values);
            for (var k = 0; k < free; k++) (matrix[free + i, k], matrix[k, free + i]) = (gradient[Free[k]], -gradient[Free[k]]);
            Bend(matrix, Rows[i], gradient, values, -Rows[i].Sign * multipliers[i]);
        }

        var factors = Matrix<double>.Build.DenseOfArray(matrix).LU();
        double[] pivots = [.. factors.U.Diagonal().Select(Math.Abs)];
        if (!(pivots.Min() > Dependent * pivots.Max())) return null;
        var solved = factors.Solve(Vector<double>.Build.Dense(right)).ToArray();
        return (solved[..free], solved[free..]);
    }

    /// <summary>Adds the second derivatives of a scatter term s = √Σ(w·x)²: (w²·δ − slope·slope)/s, its slope being what the gradient has more than the coefficients.</summary>
    private void Bend(double[,] matrix, HeldRow held, double[] gradient, double[] values, double price)
    {
        if (held.Row.Scatter is not { } weights) return;
        var scatter = held.Row.ScatterAt(values);
        double[] slopes = [.. Free.Select(j => gradient[j] - held.Row.Coefficients[j])];
        for (var k = 0; k < slopes.Length; k++)
        {
            matrix[k, k] += price * weights[Free[k]] * weights[Free[k]] / scatter;
            for (var l = 0; l < slopes.Length; l++) matrix[k, l] -= price * slopes[k] * slopes[l] / scatter;
        }
    }

    private static HeldRow? Held(Row row, (bool Least, bool Most) active, double[] values)
    {
        if (row.Scatter is not null) return row.Violation(values) >= -ProgramSolver.Tolerance ? new(row, double.IsFinite(row.Least), double.IsFinite(row.Most)) : null;
        return active is { Least: false, Most: false } ? null : new(row, active.Least, active.Most);
    }
}
