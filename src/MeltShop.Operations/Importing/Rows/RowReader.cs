using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Importing.Files;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Importing.Rows;

/// <summary>Makes of each row what the map says that it is, or says what is wrong with it, cell by cell.</summary>
internal sealed class RowReader
{
    private const int MostText = 60;

    private readonly ColumnMap map;
    private readonly FileInstant instants;
    private readonly DateTimeOffset latest;
    private readonly Dictionary<ColumnRole, MappedColumn> single;
    private readonly MappedColumn[] times;
    private readonly (MappedColumn Column, Element Element)[] elements;
    private readonly HashSet<string> notMeasured;
    private readonly Dictionary<string, SampleKind> kinds;
    private readonly FigureCells figures;
    private readonly int width;

    /// <param name="map">Checked.</param>
    /// <param name="zone">The site's.</param>
    /// <param name="latest">No coin can have been taken after it.</param>
    public RowReader(ColumnMap map, TimeZoneInfo zone, DateTimeOffset latest)
    {
        (this.map, this.latest) = (map, latest);
        instants = new(map.TimeForm, zone);
        single = map.Columns.Where(c => c.Role is not (ColumnRole.Element or ColumnRole.Figure or ColumnRole.TakenAt)).ToDictionary(c => c.Role);
        times = [.. map.Columns.Where(c => c.Role == ColumnRole.TakenAt).OrderBy(c => c.Place)];
        elements = [.. map.Columns.Where(c => c.Role == ColumnRole.Element).Select(c => (c, Element.Parse(c.Element!)))];
        notMeasured = [.. map.NotMeasuredTexts.Split(' ', StringSplitOptions.RemoveEmptyEntries)];
        kinds = map.KindTexts.ToDictionary(k => k.Text.Trim(), k => k.Kind, StringComparer.OrdinalIgnoreCase);
        figures = new(map, IsMeasured);
        width = map.Columns.Max(c => c.Place) + 1;
    }

    /// <summary>
    /// The row; where <paramref name="faults"/> got one or more, as far as it can be read, and null where nothing of it can: its sample
    /// does not count either.
    /// </summary>
    public ImportRow? Read(SheetRow row, List<RowFault> faults)
    {
        if (row.IsBroken) faults.Add(new(row.Line, "", row.Text, "importRow.quotes"));
        else if (row.Cells.Count < width) faults.Add(new(row.Line, "", row.Text, "importRow.short", row.Cells.Count, width));
        if (row.IsBroken || row.Cells.Count < width) return null;

        var subject = Word(row, ColumnRole.Reference, faults) is { } reference ? OfACheck(row, reference, faults) : OfAHeat(row, faults);
        var isOfFigures = SampleKinds.OfFigures.Contains(subject.Kind);
        return new(
            row.Line, subject, TakenAt(row, faults), Burn(row, faults), Word(row, ColumnRole.Remarks, faults, most: FileBounds.MostSigns), isOfFigures ? NoReadings(row, faults) : Readings(row, faults), row.Text)
        {
            Figures = figures.Read(row, subject.Kind, faults),
        };
    }

    /// <summary>It is of no heat, whatever stands in the other columns.</summary>
    private RowSubject OfACheck(SheetRow row, string reference, List<RowFault> faults) =>
        new(Word(row, ColumnRole.SampleNumber, faults, isNeeded: true), null, null, null, SampleKind.Bath, null) { Reference = reference };

    private RowSubject OfAHeat(SheetRow row, List<RowFault> faults)
    {
        var number = Word(row, ColumnRole.SampleNumber, faults, isNeeded: true);
        var heatColumn = single.GetValueOrDefault(ColumnRole.Heat) ?? single.GetValueOrDefault(ColumnRole.Furnace);
        if (heatColumn is null)
        {
            // A map of checks alone: the row does not say of which material.
            faults.Add(Fault(row, single[ColumnRole.Reference], "importCell.missing"));
            return new(number, null, null, null, SampleKind.Bath, null);
        }

        var subject = new RowSubject(
            number, Word(row, ColumnRole.Heat, faults), Word(row, ColumnRole.Furnace, faults), Word(row, ColumnRole.Ladle, faults), Kind(row, faults), Word(row, ColumnRole.Coin, faults));
        if (subject.Heat is null && subject.Furnace is null) faults.Add(Fault(row, heatColumn, "importCell.missing"));
        if (subject is { Number: null, Coin: null } && !single.ContainsKey(ColumnRole.SampleNumber)) faults.Add(Fault(row, single[ColumnRole.Coin], "importCell.missing"));
        return subject with { IsGrey = IsGrey(row, SampleKinds.OfFigures.Contains(subject.Kind), faults) };
    }

    private static RowFault Fault(SheetRow row, MappedColumn column, string code, params object[] arguments) =>
        new(row.Line, column.Heading, row.Cells[column.Place].Text, code, arguments);

    private string? Word(SheetRow row, ColumnRole role, List<RowFault> faults, bool isNeeded = false, int most = MostText)
    {
        if (!single.TryGetValue(role, out var column)) return null;
        var text = row.Cells[column.Place].Text.Trim();
        if (text.Length > most) faults.Add(Fault(row, column, "text.tooLong", most));
        if (text.Length > 0) return text;
        if (isNeeded) faults.Add(Fault(row, column, "importCell.missing"));
        return null;
    }

    private SampleKind Kind(SheetRow row, List<RowFault> faults)
    {
        var text = Word(row, ColumnRole.Kind, faults);
        if (text is not null)
        {
            if (kinds.TryGetValue(text, out var kind)) return kind;
            faults.Add(Fault(row, single[ColumnRole.Kind], "importKind.unknown", text));
        }
        else if (map.UsualKind is null)
        {
            faults.Add(Fault(row, single[ColumnRole.Kind], "importCell.missing"));
        }

        return map.UsualKind ?? default;
    }

    /// <summary>A cup and a wedge have a fracture of their own kind, which says nothing of carbon.</summary>
    private bool IsGrey(SheetRow row, bool isOfFigures, List<RowFault> faults)
    {
        if (isOfFigures || Word(row, ColumnRole.Fracture, faults) is not { } text) return false;
        if (string.Equals(text, map.GreyText.Trim(), StringComparison.OrdinalIgnoreCase)) return true;
        if (!string.Equals(text, map.WhiteText.Trim(), StringComparison.OrdinalIgnoreCase)) faults.Add(Fault(row, single[ColumnRole.Fracture], "importFracture.unknown", text));
        return false;
    }

    private bool IsMeasured(Cell cell) => !cell.IsEmpty && !(notMeasured.Count > 0 && notMeasured.Contains(cell.Text.Trim()));

    /// <summary>A cup and a wedge have none.</summary>
    private List<ReadingInput> NoReadings(SheetRow row, List<RowFault> faults)
    {
        foreach (var (column, _) in elements.Where(e => IsMeasured(row.Cells[e.Column.Place]))) faults.Add(Fault(row, column, "sample.figuresOnly"));
        return [];
    }

    private DateTimeOffset TakenAt(SheetRow row, List<RowFault> faults)
    {
        var (instant, code) = instants.Read([.. times.Select(t => row.Cells[t.Place])]);
        if (code is null && instant > latest) code = "time.future";
        if (code is not null) faults.Add(Fault(row, times[0], code, map.TimeForm) with { Text = string.Join(' ', times.Select(t => row.Cells[t.Place].Text)) });
        return instant;
    }

    private int? Burn(SheetRow row, List<RowFault> faults)
    {
        if (!single.TryGetValue(ColumnRole.Burn, out var column)) return null;
        var number = FileNumber.Read(row.Cells[column.Place].Text, DecimalSign.Point);
        if (number is { Code: null, IsBelow: false, Value: >= 1 and <= ReadingInputs.MostBurns } && number.Value % 1 == 0) return (int)number.Value;
        faults.Add(Fault(row, column, "importBurn.number", ReadingInputs.MostBurns));
        return null;
    }

    private List<ReadingInput> Readings(SheetRow row, List<RowFault> faults)
    {
        var readings = new List<ReadingInput>(elements.Length);
        var (before, sum) = (faults.Count, 0.0);
        foreach (var (column, element) in elements)
        {
            var cell = row.Cells[column.Place];
            if (!IsMeasured(cell)) continue;
            var number = cell.Value is double value ? new FileNumber(value, false, double.IsFinite(value) ? null : "importNumber.unreadable") : FileNumber.Read(cell.Text, map.DecimalSign);
            var percent = column.Unit == ElementUnit.PartsPerMillion ? number.Value / 10_000 : number.Value;
            var code = number.Code ?? (percent < 0 ? "percent.negative" : percent > 100 ? "percent.over100" : cell.Text.Length > MostText ? "text.tooLong" : null);
            if (code is not null) faults.Add(Fault(row, column, code, code == "text.tooLong" ? MostText : percent));
            sum += percent;
            readings.Add(new(element.Symbol, percent, number.IsBelow, cell.Text));
        }

        if (faults.Count == before && sum > 100 + Analysis.SumTolerance) faults.Add(new(row.Line, "", row.Text, "analysis.sum", sum));
        if (readings.Count == 0 && faults.Count == before) faults.Add(new(row.Line, "", row.Text, "burn.empty"));
        return readings;
    }
}
