namespace MeltShop.Records.Exchange.Archives;

/// <summary>
/// A table for a spreadsheet (RFC 4180). A text that a spreadsheet would take for a formula gets an apostrophe before it, so that nobody's
/// remark is carried out on another's computer; numbers stay numbers. A text that is empty or begins with an apostrophe gets one too, so that
/// taking one away gives every text back, and an empty cell is null and nothing else.
/// </summary>
internal static class Sheet
{
    private const char Guard = '\'';
    private const string FormulaSigns = "=+-@\t\r";

    public static string Line(IEnumerable<object?> values) => string.Join(',', values.Select(Cell)) + "\r\n";

    /// <summary>The text of a cell without its guard.</summary>
    public static string Unguarded(string cell) => cell[0] == Guard ? cell[1..] : cell;

    private static string Cell(object? value)
    {
        if (value is null) return "";
        var text = StoredValue.Text(value)!;
        if (value is string or byte[] && IsGuarded(text)) text = Guard + text;
        return text.AsSpan().ContainsAny(",\"\r\n") ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
    }

    private static bool IsGuarded(string text) => text.Length == 0 || text[0] == Guard || FormulaSigns.Contains(text[0], StringComparison.Ordinal);
}
