namespace MeltShop.Charging.Formulation;

/// <summary>Pieces of a material of which some mass is weighed in already: mass = what is in + piece × a whole number.</summary>
internal static class PieceRows
{
    /// <summary>What the names of these rows begin with.</summary>
    public const string Prefix = "pieces: ";

    public static LinearProgram Add(LinearProgram program, Melt melt, double[] unitKg)
    {
        for (var j = 0; j < melt.Columns.Count; j++)
        {
            var column = melt.Columns[j];
            if (column.IsInPieces || column.Material?.PieceKg is not { } piece) continue;
            var mass = new double[program.Columns.Count];
            mass[j] = unitKg[j] / piece;
            var most = Math.Floor((melt.MostKg(column) - column.WeighedKg) / piece + 1e-9);
            program = program
                .With(new Row(Prefix + column.Name, mass, column.WeighedKg / piece, column.WeighedKg / piece))
                .With(new Column($"further pieces: {column.Name}", 0, 0, most, Whole: true), (program.Rows.Count, -1));
        }

        return program;
    }
}
