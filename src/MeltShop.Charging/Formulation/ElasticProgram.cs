namespace MeltShop.Charging.Formulation;

/// <summary>
/// The program of a melt in which every row may be missed, at a price: the harm. What is weighed in, the stock, whole pieces and what the furnace
/// holds stay as they are. The unit of harm is one percent of the melt in mass.
/// </summary>
internal static class ElasticProgram
{
    /// <summary>A share missed by so many points does as much harm as a mass by one percent of the melt.</summary>
    private const double SharePoints = 5;

    private const double PercentOfMelt = 0.01;

    /// <summary>The program with harm as its cost.</summary>
    public static LinearProgram Of(MeltFormulation formulation)
    {
        var shares = formulation.ShareRows.Select(r => r.Name).ToHashSet();
        var program = WithLeastMasses(formulation);
        program = program.With(formulation.Bounds.Select(formulation.RowOf));
        var rows = program.Rows.Count;
        for (var i = 0; i < rows; i++)
        {
            var row = program.Rows[i];
            if (row.Name.StartsWith(PieceRows.Prefix, StringComparison.Ordinal)) continue;
            var harm = row.Bounds.Count > 0 ? HarmOf(row) / row.ShiftPerPointKg / formulation.Melt.ScaleKg : 1 / (shares.Contains(row.Name) ? SharePoints / 100 : PercentOfMelt);
            if (double.IsFinite(row.Least)) program = program.With(new Column($"too little: {row.Name}", harm, 0, double.PositiveInfinity), (i, 1));
            if (double.IsFinite(row.Most)) program = program.With(new Column($"too much: {row.Name}", harm, 0, double.PositiveInfinity), (i, -1));
        }

        var melt = formulation.Melt;
        if (!double.IsFinite(melt.CapacityKg)) return program;
        var most = Math.Max(melt.CapacityKg, melt.LiquidKg([.. melt.Columns.Select(c => c.WeighedKg)]));
        return program.With(new Row("what the furnace holds", formulation.Liquid, double.NegativeInfinity, (most - melt.Start.Kg) / melt.ScaleKg));
    }

    /// <summary>A compulsory mass may be missed too; what is weighed in already may not.</summary>
    private static LinearProgram WithLeastMasses(MeltFormulation formulation)
    {
        var program = formulation.Program([]).Free();
        for (var j = 0; j < formulation.Columns.Count; j++)
        {
            var column = formulation.Columns[j];
            var standing = formulation.Melt.Columns[j].WeighedKg / formulation.Melt.ScaleKg; // of whole pieces nothing: the unknown is the rest then
            if (column.Least <= standing) continue;
            var least = new double[program.Columns.Count];
            var unit = formulation.Melt.UnitKg(formulation.Melt.Columns[j]) / formulation.Melt.ScaleKg;
            least[j] = unit;
            program = (program with { Columns = [.. program.Columns.Select((c, k) => k == j ? c with { Least = standing } : c)] })
                .With(new Row($"least mass: {column.Name}", least, column.Least * unit, double.PositiveInfinity));
        }

        return program;
    }

    /// <summary>Harm of missing a bound by one point.</summary>
    private static double HarmOf(Row row)
    {
        var half = row.Bounds[0].HalfWindow;
        return row.Bounds[0].Limit.HarmWeight / (half > 0 ? half : PercentOfMelt);
    }
}
