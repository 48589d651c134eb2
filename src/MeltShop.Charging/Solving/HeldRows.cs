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

    /// <summary>How far a price may be on the wrong side of zero; costs are about 1.</summary>
    private const double SignTolerance = 1e-9;

    private readonly LinearProgram program;

    public HeldRows(LinearProgram program, Solution near) : this(program, near, new ActiveSet(near))
    {
    }

    private HeldRows(LinearProgram program, Solution near, ActiveSet active) : this(program, near.Values, active.Columns, [.. program.Rows
        .Select((r, i) => Held(r, active.Rows[i], near.Values)).OfType<HeldRow>()
        .Select(h => (Row: h, Price: near.Solved.Rows.Zip(near.Duals).Where(r => ReferenceEquals(r.First, h.Row) || ReferenceEquals(r.First.PlaneOf, h.Row)).Sum(r => r.Second)))])
    {
    }

    private HeldRows(LinearProgram program, double[] values, IReadOnlyList<(bool Least, bool Most)> columns, IReadOnlyList<(HeldRow Row, double Price)> held)
    {
        this.program = program;
        Free = [.. Enumerable.Range(0, program.Columns.Count).Where(j => columns[j] is { Least: false, Most: false })];
        Bounds = [.. Enumerable.Range(0, program.Columns.Count).Except(Free).Select(j => (j, columns[j].Least, columns[j].Most))];
        All = [.. held.Select(h => h.Row)];
        var independent = Independent(held.OrderByDescending(h => Math.Abs(h.Price)), values).ToList();
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
        for (var k = 0; k < free; k++) right[k] = -program.Columns[Free[k]].Cost;
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

    /// <summary>What one more of each column costs, with what it does to the rows that hold.</summary>
    public double[] ReducedCosts(double[] values, double[] multipliers)
    {
        double[] reduced = [.. program.Columns.Select(c => c.Cost)];
        foreach (var (held, price) in Rows.Zip(multipliers))
        {
            var gradient = Gradient(held.Row, values);
            for (var j = 0; j < reduced.Length; j++) reduced[j] -= price * gradient[j];
        }

        return reduced;
    }

    /// <summary>To raise a lower bound can only make dearer, an upper one only cheaper; where both hold it may do either.</summary>
    public static bool IsWrong(double price, bool isLeast, bool isMost) => !isLeast && price > SignTolerance || !isMost && price < -SignTolerance;

    /// <summary>
    /// The next guess, where this one leads to a point that is not the cheapest: what is missed most there is held, or else, of all that is held, what has the wrong price is let go. One
    /// at a time, since what else is wrong may be so for its sake only. Null where nothing is left to change, or no room to hold more.
    /// </summary>
    public HeldRows? Mended(double[] values, double[] multipliers)
    {
        var columns = new (bool Least, bool Most)[program.Columns.Count];
        foreach (var (column, least, most) in Bounds) columns[column] = (least, most);
        var held = Rows.Zip(multipliers).ToList();
        return Hold(columns, held, values) || LetGo(columns, held, ReducedCosts(values, multipliers)) ? Independently(new(program, values, columns, held)) : null;

        HeldRows? Independently(HeldRows next) => next.Rows.Count == held.Count ? next : null;
    }

    private bool Hold((bool Least, bool Most)[] columns, List<(HeldRow Row, double Price)> held, double[] values)
    {
        var outside = Free.Where(j => Outside(j) > 0).ToList();
        if (outside.Count > 0 && outside.MaxBy(Outside) is var j) columns[j] = (values[j] < program.Columns[j].Least, values[j] > program.Columns[j].Most);
        var missed = program.Rows.Where(r => r.Violation(values) > ProgramSolver.Tolerance && All.All(h => !ReferenceEquals(h.Row, r))).MaxBy(r => r.Violation(values));
        if (missed is not null) held.Add((new(missed, IsBelow(missed), !IsBelow(missed)), 0));
        return outside.Count > 0 || missed is not null;

        double Outside(int j) => Math.Max(program.Columns[j].Least - values[j], values[j] - program.Columns[j].Most);
        bool IsBelow(Row row) => row.Activity(values) - row.ScatterAt(values) < row.Least;
    }

    private bool LetGo((bool Least, bool Most)[] columns, List<(HeldRow Row, double Price)> held, double[] reduced)
    {
        var rows = held.Where(h => IsWrong(h.Price, h.Row.Least, h.Row.Most)).ToList();
        var bounds = Bounds.Where(b => IsWrong(reduced[b.Column], b.Least, b.Most)).ToList();
        if (rows.Count > 0) held.Remove(rows.MaxBy(h => Math.Abs(h.Price)));
        else if (bounds.Count > 0) columns[bounds.MaxBy(b => Math.Abs(reduced[b.Column])).Column] = default;
        return rows.Count + bounds.Count > 0;
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
