using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

namespace MeltShop.Charging.Formulation;

/// <summary>
/// Writes a melt as a program: one column a material, every row named. Unknowns are masses over the scale of the melt (or
/// pieces), limit rows are divided by their largest coefficient, so that tolerances mean the same for carbon and for bismuth.
/// </summary>
internal sealed class MeltFormulation
{
    private readonly double[] unitKg;
    private readonly Dictionary<LimitBound, Row> limitRows;

    public MeltFormulation(Melt melt)
    {
        Melt = melt;
        unitKg = [.. melt.Columns.Select(melt.UnitKg)];
        var dearest = melt.Columns.Select(c => Math.Abs(c.CostPerKg - c.BonusPerKg)).DefaultIfEmpty().Max();
        CostScale = melt.ScaleKg * (dearest > 0 ? dearest : 1);
        Columns = [.. melt.Columns.Select(ColumnOf)];
        Liquid = [.. melt.Columns.Select((c, j) => c.LiquidKg * unitKg[j] / melt.ScaleKg)];
        Bounds = LimitBound.Of(melt.Limits);
        MassRows = [.. MassRowsOf()];
        ShareRows = [.. ShareRowsOf()];
        limitRows = LimitRows.Of(melt, Bounds, unitKg);
    }

    public Melt Melt { get; }

    public IReadOnlyList<Column> Columns { get; }

    /// <summary>Liquid mass of a unit of each column, over the scale.</summary>
    public double[] Liquid { get; }

    public IReadOnlyList<LimitBound> Bounds { get; }

    public IReadOnlyList<Row> MassRows { get; }

    public IReadOnlyList<Row> ShareRows { get; }

    /// <summary>Cost of 1 in the program's objective.</summary>
    public double CostScale { get; }

    /// <summary>Weighed mass of a unit of each column, over the scale.</summary>
    public double[] WeighedPerUnit => Weighed(_ => 1);

    public Row RowOf(LimitBound bound) => limitRows[bound];

    /// <summary>The row of a bound as if it stood at another value, without margin.</summary>
    public Row RowAt(LimitBound bound, double value) => RowAt(bound.LimitIndex, bound.Limit, value, bound.IsMax);

    public Row RowAt(int limitIndex, QuantityLimit limit, double value, bool isMax) =>
        LimitRows.Of(Melt, [new(limitIndex, limit with { Min = value, Max = value, Margin = 0 }, isMax)], unitKg).Values.Single();

    /// <summary>The program with all rows of mass and share and the rows of some bounds.</summary>
    public LinearProgram Program(IEnumerable<LimitBound> bounds)
    {
        var (rows, barred) = LimitRows.WithoutRoom([.. bounds.Select(RowOf)]);
        var columns = barred.Count == 0 ? Columns : [.. Columns.Select((c, j) => barred.Contains(j) ? c with { Most = Math.Min(c.Most, 0) } : c)];
        return PieceRows.Add(new(columns, [.. MassRows, .. ShareRows, .. LimitRows.Merge(rows)]), Melt, unitKg);
    }

    /// <summary>The program that a plan is the solution of: all bounds, and the wishes to be near an aim.</summary>
    public LinearProgram Whole() => NearnessRows.Add(Program(Bounds), this);

    /// <summary>Kilograms of each column; what lies within rounding of a bound lies on it.</summary>
    public double[] Kilograms(double[] values) => Kilograms(values, Columns);

    /// <summary>The same where a program gave the columns other bounds.</summary>
    public double[] Kilograms(double[] values, IReadOnlyList<Column> bounds) => [.. unitKg.Select((kg, j) => Snap(values[j], bounds[j]) * kg)];

    /// <summary>Kilograms of each column where pieces were not asked to be whole.</summary>
    public double[] ContinuousKilograms(double[] values) => [.. Columns.Select((c, j) => Snap(values[j], c with { Whole = false }) * unitKg[j])];

    private static double Snap(double value, Column column) =>
        value <= column.Least + 1e-10 ? column.Least
        : value >= column.Most - 1e-10 ? column.Most
        : column.Whole ? Math.Round(value) : value;

    private Column ColumnOf(MeltColumn column, int index)
    {
        var (least, most) = (column.LeastKg / unitKg[index], Melt.MostKg(column) / unitKg[index]);
        var whole = column.IsInPieces;
        if (whole) (least, most) = (Math.Ceiling(least - 1e-9), Math.Floor(most + 1e-9));
        return new(column.Name, (column.CostPerKg - column.BonusPerKg) * unitKg[index] / CostScale, least, most, whole);
    }

    private IEnumerable<Row> MassRowsOf()
    {
        var (least, most) = ((Melt.LeastLiquidKg - Melt.Start.Kg) / Melt.ScaleKg, (Melt.MostLiquidKg - Melt.Start.Kg) / Melt.ScaleKg);
        yield return new("liquid", Liquid, least, most)
        {
            Asked = new(MissKind.LiquidKg, "", Melt.LeastLiquidKg > 0 ? Melt.LeastLiquidKg : null, double.IsFinite(Melt.MostLiquidKg) ? Melt.MostLiquidKg : null, 1 / Melt.ScaleKg),
        };
        if (double.IsFinite(Melt.MostWeighedKg))
        {
            yield return new("weighed in all", WeighedPerUnit, double.NegativeInfinity, Melt.MostWeighedKg / Melt.ScaleKg)
            {
                Asked = new(MissKind.WeighedKg, "", null, Melt.MostWeighedKg, 1 / Melt.ScaleKg),
            };
        }

        foreach (var row in GroupRows.OfMass(Melt, Weighed)) yield return row;
        foreach (var row in VolumeRows.Of(Melt, unitKg)) yield return row;
    }

    private IEnumerable<Row> ShareRowsOf()
    {
        foreach (var column in Melt.Columns)
        {
            if (column.Material is not { } material) continue;
            if (material.MinPercent > 0) yield return Share("least share", column, material.MinPercent, 0, double.PositiveInfinity) with { Asked = Asked(material.MinPercent, null) };

            // What cannot come in at all needs no row: a second reason would only blur what the first one is worth.
            if (material.MaxPercent < 100 && Melt.MostKg(column) > 0)
                yield return Share("greatest share", column, material.MaxPercent, double.NegativeInfinity, 0) with { Asked = Asked(null, material.MaxPercent) };

            Asked Asked(double? least, double? most) => new(MissKind.MaterialPercent, column.Name, least, most, 0.01 / Melt.ScaleKg);
        }

        foreach (var row in GroupRows.OfShare(Melt, Weighed)) yield return row;
    }

    private Row Share(string name, MeltColumn of, double percent, double least, double most) =>
        new($"{name}: {of.Name}", Weighed(c => (c == of ? 1 : 0) - percent / 100), least, most);

    /// <summary>Something per weighed kilogram of each material, as coefficients of a row in units of the scale; 0 for tapping off.</summary>
    public double[] Weighed(Func<MeltColumn, double> perKg) =>
        [.. Melt.Columns.Select((c, j) => c.Material is null ? 0 : perKg(c) * unitKg[j] / Melt.ScaleKg)];
}
