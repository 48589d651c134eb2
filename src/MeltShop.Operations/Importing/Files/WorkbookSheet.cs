using System.Globalization;
using System.Text;
using System.Xml;
using ExcelDataReader;
using ExcelDataReader.Exceptions;

namespace MeltShop.Operations.Importing.Files;

/// <summary>The rows of a workbook's first sheet, one at a time.</summary>
internal static class WorkbookSheet
{
    // The library looks this coding up, also for workbooks that do not use it.
    static WorkbookSheet() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    /// <exception cref="SheetFault">No sound workbook, or one beyond the bounds.</exception>
    public static IEnumerable<SheetRow> Rows(byte[] bytes)
    {
        PackedParts.Check(bytes);
        using var reader = Guard(() => ExcelReaderFactory.CreateOpenXmlReader(new MemoryStream(bytes, writable: false)));
        if (reader.FieldCount > FileBounds.MostColumns) throw SheetFault.Of("importFile.columns", FileBounds.MostColumns);
        if (reader.RowCount > FileBounds.MostRows) throw SheetFault.Of("importFile.rows", FileBounds.MostRows);
        for (var line = 1; Guard(reader.Read); line++)
        {
            var cells = Guard(() => Enumerable.Range(0, reader.FieldCount).Select(i => Of(reader.GetValue(i))).ToArray());
            if (Array.Exists(cells, c => !c.IsEmpty)) yield return new(line, cells, string.Join('\t', cells.Select(c => c.Text)));
        }
    }

    private static Cell Of(object? value) => value switch
    {
        null => new(""),
        string text => new(text.Length <= FileBounds.MostSigns ? text : throw SheetFault.Of("importFile.longCell", FileBounds.MostSigns)),
        double number => new(number.ToString("R", CultureInfo.InvariantCulture), number),
        DateTime instant => new(instant.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture), instant),
        IFormattable other => new(other.ToString(null, CultureInfo.InvariantCulture)),
        _ => new(value.ToString() ?? ""),
    };

    /// <summary>Whatever a broken workbook makes the library throw means the same: it cannot be read.</summary>
    private static T Guard<T>(Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception fault) when (fault is ExcelReaderException or XmlException or InvalidDataException or IOException or FormatException
            or OverflowException or ArgumentException or InvalidOperationException or NotSupportedException or NullReferenceException
            or IndexOutOfRangeException or InvalidCastException or KeyNotFoundException)
        {
            throw SheetFault.Of("importFile.unreadable");
        }
    }
}
