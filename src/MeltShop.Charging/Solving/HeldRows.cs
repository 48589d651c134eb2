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
    /// <summary>What is left of a gradient beside those before it, as a share of its size: with less the row says nothing that they do not.</summary>
    private const double Dependent = 1e-7;

    /// <summary>A pivot smaller than this, beside the largest, is rounding.</summary>
    private const double Rounding = 1e-15;

    private readonly double[] costs;

    public HeldRows(LinearProgram program, Solution near)
    {
        var active = new ActiveSet(near);
        costs = [.. program.Columns.Select(c => c.Cost)];
        Free = [.. Enumerable.Range(0, costs.Length).Where(j => active.Columns[j] is { Least: false, Most: false })];
        Bounds = [.. Enumerable.Range(0, costs.Length).Except(Free).Select(j => (j, active.Columns[j].Least, active.Columns[j].Most))];
        All = [.. program.Rows.Select((r, i) => Held(r, active.Rows[i], near.Values)).OfType<HeldRow>()];
        var priced = All.Select(h => (Row: h, Price: near.Solved.Rows.Zip(near.Duals).Where(r => ReferenceEquals(r.First, h.Row) || ReferenceEquals(r.First.PlaneOf, h.Row)).Sum(r => r.Second)));
        var independent = Independent(priced.OrderByDescending(h => Math.Abs(h.Price)), near.Values).ToList();
        (Rows, Multipliers) = ([.. independent.Select(h => h.Row)], [.. independent.Select(h => h.Price)]);
    }

    public int[] Free { get; }

    public (int Column, bool Least, bool Most)[] Bounds { get; }

    /// <summary>Every row that it sits on.</summary>
    public IReadOnlyList<HeldRow> All { get; }

    /// <summary>Of these as many as are independent, those first that cost most.</summary>
    public IReadOnlyList<HeldRow> Rows { get; }

    /// <summary>What each of the independent rows costs, as far as the planes know.</summary>
    public double[] Multipliers { get; }

    /// <summary>A step of Newton's method for the columns that are free, and the multipliers after it; null where they cannot be told.</summary>
    public (double[] Moves, double[] Multipliers)? Step(double[] values, double[] multipliers)
    {
        var (free, size) = (Free.Length, Free.Length + Rows.Count);
        if (size == 0) return ([], []);
        var (matrix, right) = (new double[size, size], new double[size]);
        for (var k = 0; k < free; k++) right[k] = -costs[Free[k]];
        for (var i = 0; i < Rows.Count; i++)
        {
            var gradient = Gradient(Rows[i].Row, values);
            right[free + i] = Rows[i].Short(values);
            for (var k = 0; k < free; k++) (matrix[free + i, k], matrix[k, free + i]) = (gradient[Free[k]], -gradient[Free[k]]);
            Bend(matrix, Rows[i], gradient, values, -Rows[i].Sign * multipliers[i]);
        }

        var factors = Matrix<double>.Build.DenseOfArray(matrix).LU();
        double[] pivots = [.. factors.U.Diagonal().Select(Math.Abs)];
        if (!(pivots.Min() > Rounding * pivots.Max())) return null;
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

    /// <summary>Of two rows that hold the same, or of one that only columns on their bounds could move, no price can be told: the later one is left out.</summary>
    private IEnumerable<(HeldRow Row, double Price)> Independent(IEnumerable<(HeldRow Row, double Price)> held, double[] values)
    {
        var directions = new List<Vector<double>>();
        foreach (var one in held)
        {
            var gradient = Gradient(one.Row.Row, values);
            var rest = Vector<double>.Build.Dense([.. Free.Select(j => gradient[j])]);
            var size = rest.L2Norm();
            foreach (var direction in directions) rest -= direction * (direction * rest);
            var left = rest.L2Norm();
            if (!(left > Dependent * size)) continue;
            directions.Add(rest / left);
            yield return one;
        }
    }

    private static double[] Gradient(Row row, double[] values) => row.Scatter is null ? row.Coefficients : row.Tangent(values, "").Coefficients;

    private static HeldRow? Held(Row row, (bool Least, bool Most) active, double[] values)
    {
        if (row.Scatter is not null) return row.Violation(values) >= -ProgramSolver.Tolerance ? new(row, double.IsFinite(row.Least), double.IsFinite(row.Most)) : null;
        return active is { Least: false, Most: false } ? null : new(row, active.Least, active.Most);
    }
}
