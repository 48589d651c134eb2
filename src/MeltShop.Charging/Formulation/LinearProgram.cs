namespace MeltShop.Charging.Formulation;

/// <summary>
/// Minimise cost over named columns within named rows. A row may carry scatter, which makes it a cone; all the rest is linear.
/// </summary>
internal sealed record LinearProgram(IReadOnlyList<Column> Columns, IReadOnlyList<Row> Rows)
{
    public bool HasWholeColumns => Columns.Any(c => c.Whole);

    /// <summary>The program without costs: any solution will do.</summary>
    public LinearProgram Free() => Priced([]);

    /// <summary>The program with other costs; columns without one cost nothing.</summary>
    public LinearProgram Priced(double[] costs) => this with { Columns = [.. Columns.Select((c, j) => c with { Cost = costs.ElementAtOrDefault(j) })] };

    /// <summary>The program with one more column, which occurs in the rows that are named with the coefficients that are named.</summary>
    public LinearProgram With(Column column, params IReadOnlyList<(int Row, double Coefficient)> coefficients)
    {
        var rows = Rows.Select(r => r.Widened()).ToArray();
        foreach (var (row, coefficient) in coefficients) rows[row].Coefficients[^1] = coefficient;
        return new([.. Columns, column], rows);
    }

    /// <summary>The program with further rows; those written for fewer columns do not depend on the others.</summary>
    public LinearProgram With(params IEnumerable<Row> rows) => this with { Rows = [.. Rows, .. rows.Select(r => r.Widened(Columns.Count))] };

    public double Cost(double[] values) => Columns.Select((c, j) => c.Cost * values[j]).Sum();
}

/// <summary>An unknown of the program, in its own unit (a share of the melt, a piece).</summary>
internal sealed record Column(string Name, double Cost, double Least, double Most, bool Whole = false);

/// <summary>A row of the program: least ≤ coefficients · values ≤ most.</summary>
internal sealed record Row(string Name, double[] Coefficients, double Least, double Most)
{
    /// <summary>The limit's bounds that this row states; empty for rows of mass, stock and share.</summary>
    public IReadOnlyList<LimitBound> Bounds { get; init; } = [];

    /// <summary>What a row of mass, share or room was asked for; null for others.</summary>
    public Asked? Asked { get; init; }

    /// <summary>How far the right-hand side moves for +1 on the bound and a kilogram of liquid.</summary>
    public double ShiftPerPointKg { get; init; }

    /// <summary>
    /// Weights w of a scatter term: the row is coefficients · values ∓ √Σ(w·value)², − before a lower bound, + before an upper
    /// one. Null for a linear row.
    /// </summary>
    public double[]? Scatter { get; init; }

    /// <summary>The row with scatter that this one is a plane of; null where it is none.</summary>
    public Row? PlaneOf { get; init; }

    /// <summary>The row with a further column that it does not depend on.</summary>
    public Row Widened() => Widened(Coefficients.Length + 1);

    /// <summary>The row for that many columns: it does not depend on the further ones.</summary>
    public Row Widened(int columns) => columns <= Coefficients.Length ? this : this with { Coefficients = Wide(Coefficients, columns), Scatter = Scatter is null ? null : Wide(Scatter, columns) };

    public double Activity(double[] values)
    {
        var sum = 0.0;
        for (var j = 0; j < values.Length; j++) sum += Coefficients[j] * values[j];
        return sum;
    }

    /// <summary>Size of the scatter term.</summary>
    public double ScatterAt(double[] values)
    {
        if (Scatter is null) return 0;
        var sum = 0.0;
        for (var j = 0; j < values.Length; j++) sum += Scatter[j] * values[j] * Scatter[j] * values[j];
        return Math.Sqrt(sum);
    }

    /// <summary>By how much the row is missed, scatter included; negative inside.</summary>
    public double Violation(double[] values)
    {
        var (activity, scatter) = (Activity(values), ScatterAt(values));
        return Math.Max(Least - activity + scatter, activity + scatter - Most);
    }

    /// <summary>
    /// The plane that touches the cone at a point. The scatter term is homogeneous, so that the plane has no constant of its own.
    /// </summary>
    public Row Tangent(double[] values, string name)
    {
        var size = ScatterAt(values);
        var sign = double.IsFinite(Least) ? -1 : 1;
        var coefficients = Coefficients.ToArray();
        if (size > 0)
        {
            for (var j = 0; j < values.Length; j++) coefficients[j] += sign * Scatter![j] * Scatter[j] * values[j] / size;
        }

        return this with { Name = name, Coefficients = coefficients, Scatter = null, PlaneOf = this };
    }

    private static double[] Wide(double[] values, int columns)
    {
        var wide = new double[columns];
        values.CopyTo(wide, 0);
        return wide;
    }
}
