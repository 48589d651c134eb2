using MeltShop.Operations.Checking;
using MeltShop.Operations.Importing.Files;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Importing.Rows;

/// <summary>The figures of a cup or a chill wedge in a row, by the rules by which a person may enter them.</summary>
internal sealed class FigureCells(ColumnMap map, Func<Cell, bool> isMeasured)
{
    private readonly MappedColumn[] columns = [.. map.Columns.Where(c => c.Role == ColumnRole.Figure)];

    /// <summary>None of a coin, whose cells of figures are empty.</summary>
    public IReadOnlyList<FigureInput> Read(SheetRow row, SampleKind kind, List<RowFault> faults)
    {
        if (columns.Length == 0) return [];
        var figures = new List<FigureInput>();
        foreach (var column in columns)
        {
            var cell = row.Cells[column.Place];
            if (!isMeasured(cell)) continue;
            var number = cell.Value is double value ? new FileNumber(value, false, null) : FileNumber.Read(cell.Text, map.DecimalSign);
            var code = number.IsBelow ? "importNumber.unreadable" : number.Code;
            if (code is not null) faults.Add(new(row.Line, column.Heading, cell.Text, code));
            else figures.Add(new(column.Figure!.Value, number.Value, cell.Text.Trim()));
        }

        if (figures.Count == 0 && !SampleKinds.OfFigures.Contains(kind)) return figures;
        var fields = new FieldCheck();
        FigureInputs.Check(kind, figures, fields);
        foreach (var finding in fields.Findings)
        {
            var column = Array.Find(columns, c => finding.Path == $"figures.{c.Figure}");
            faults.Add(new(row.Line, column?.Heading ?? "", column is null ? row.Text : row.Cells[column.Place].Text, finding.Code, [.. finding.Arguments]));
        }

        return figures;
    }
}
