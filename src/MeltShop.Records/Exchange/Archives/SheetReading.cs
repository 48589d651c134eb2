using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace MeltShop.Records.Exchange.Archives;

/// <summary>Reads the sheet of a table back, where an archive has no lines of JSON for it. Columns are found by their heading.</summary>
internal static class SheetReading
{
    private static readonly CsvConfiguration AsWritten = new(CultureInfo.InvariantCulture)
    {
        HasHeaderRecord = false,
        IgnoreBlankLines = false,
        BadDataFound = bad => throw new InvalidDataException($"a quotation mark stands where none may, in the row of line {bad.Context.Parser?.RawRow}"),
    };

    /// <exception cref="InvalidDataException">The sheet is not one of this table; the message says where and why.</exception>
    public static async IAsyncEnumerable<object?[]> Rows(StoredTable table, TextReader text)
    {
        using var parser = new CsvParser(text, AsWritten, leaveOpen: true);
        if (!await parser.ReadAsync()) throw Fault(table, parser, "it has no headings");
        var width = parser.Count;
        var places = Places(table, parser);
        while (await parser.ReadAsync())
        {
            if (parser.Count != width) throw Fault(table, parser, $"there are {parser.Count} cells under {width} headings");
            yield return [.. table.Columns.Select((column, i) => Value(table, parser, column, parser[places[i]]))];
        }
    }

    private static int[] Places(StoredTable table, CsvParser parser)
    {
        var headings = parser.Record!;
        return [.. table.Columns.Select(c => Array.IndexOf(headings, c.Name) is var place and >= 0 ? place : throw Fault(table, parser, $"there is no column {c.Name}"))];
    }

    private static object? Value(StoredTable table, CsvParser parser, StoredColumn column, string cell)
    {
        if (cell.Length == 0) return null;
        try
        {
            return column.Kind switch
            {
                ValueKind.YesNo => bool.Parse(cell),
                ValueKind.Integer => long.Parse(cell, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture),
                ValueKind.Number => double.Parse(cell, NumberStyles.Float, CultureInfo.InvariantCulture),
                ValueKind.Instant => StoredValue.Instant(cell),
                ValueKind.Identifier => Guid.ParseExact(cell, "D"),
                ValueKind.Bytes => Convert.FromBase64String(Sheet.Unguarded(cell)),
                _ => Sheet.Unguarded(cell),
            };
        }
        catch (Exception e) when (e is FormatException or OverflowException)
        {
            throw Fault(table, parser, $"{column.Name}: {e.Message}");
        }
    }

    private static InvalidDataException Fault(StoredTable table, CsvParser parser, string why) =>
        new($"{ArchiveContents.SheetOf(table.Name)}, line {parser.RawRow}: {why}.");
}
