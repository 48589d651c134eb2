using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using MeltShop.Operations.Importing.Maps;

namespace MeltShop.Operations.Importing.Files;

/// <summary>The rows of a text file, one at a time.</summary>
internal static class TextSheet
{
    /// <exception cref="SheetFault">No text in this coding, or a row beyond the bounds.</exception>
    public static IEnumerable<SheetRow> Rows(byte[] bytes, char separator, TextCoding coding)
    {
        using var reader = Open(bytes, coding);
        var broken = false;
        using var parser = new CsvParser(reader, new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = separator.ToString(),
            HasHeaderRecord = false,
            MaxFieldSize = FileBounds.MostSigns,
            BadDataFound = _ => broken = true,
            CacheFields = true, // most cells of a column repeat
        });
        while (Next(parser))
        {
            if (parser.Count > FileBounds.MostColumns) throw SheetFault.Of("importFile.columns", FileBounds.MostColumns);
            if (parser.RawRecord.Contains('\0', StringComparison.Ordinal)) throw SheetFault.Of("importFile.noText");
            var cells = new Cell[parser.Count];
            for (var i = 0; i < cells.Length; i++) cells[i] = new(parser[i]);
            yield return new(parser.RawRow, cells, parser.RawRecord.TrimEnd('\r', '\n'), broken);
            broken = false;
        }
    }

    private static bool Next(CsvParser parser)
    {
        try
        {
            return parser.Read();
        }
        catch (MaxFieldSizeException)
        {
            throw SheetFault.Of("importFile.cell", parser.RawRow, FileBounds.MostSigns);
        }
        catch (DecoderFallbackException)
        {
            throw SheetFault.Of("importFile.coding");
        }
    }

    private static StreamReader Open(byte[] bytes, TextCoding coding)
    {
        var isWide = bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..];
        if (!isWide && bytes.AsSpan().Contains((byte)0)) throw SheetFault.Of("importFile.noText");
        Encoding encoding = coding == TextCoding.Western
            ? CodePagesEncodingProvider.Instance.GetEncoding(1252)!
            : new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
        return new StreamReader(new MemoryStream(bytes, writable: false), encoding, detectEncodingFromByteOrderMarks: true);
    }
}
