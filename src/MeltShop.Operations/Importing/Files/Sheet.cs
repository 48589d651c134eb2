using MeltShop.Operations.Importing.Maps;

namespace MeltShop.Operations.Importing.Files;

/// <summary>The rows of a file of whichever kind: what it is, its own bytes say, and not its name.</summary>
internal static class Sheet
{
    /// <exception cref="SheetFault">It cannot be read.</exception>
    public static IEnumerable<SheetRow> Rows(byte[] bytes, char separator, TextCoding coding)
    {
        if (bytes.Length == 0) throw SheetFault.Of("importFile.empty");
        if (bytes.Length > FileBounds.MostBytes) throw SheetFault.Of("importFile.tooLarge", FileBounds.MostBytes / 1024 / 1024);
        if (bytes is [0xD0, 0xCF, 0x11, 0xE0, ..]) throw SheetFault.Of("importFile.oldWorkbook");
        var rows = IsWorkbook(bytes) ? WorkbookSheet.Rows(bytes) : TextSheet.Rows(bytes, separator, coding);
        return rows.Select((row, index) => index < FileBounds.MostRows ? row : throw SheetFault.Of("importFile.rows", FileBounds.MostRows));
    }

    public static bool IsWorkbook(byte[] bytes) => bytes is [(byte)'P', (byte)'K', 3, 4, ..];
}
