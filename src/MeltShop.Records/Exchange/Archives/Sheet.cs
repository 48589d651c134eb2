namespace MeltShop.Records.Exchange.Archives;

/// <summary>
/// A table for a spreadsheet (RFC 4180). A text that a spreadsheet would take for a formula gets an apostrophe before it, so that nobody's
/// remark is carried out on another's computer; numbers stay numbers.
/// </summary>
internal static class Sheet
{
    private const string FormulaSigns = "=+-@\t\r";

    public static string Line(IEnumerable<object?> values) => string.Join(',', values.Select(Cell)) + "\r\n";

    private static string Cell(object? value)
    {
        var text = StoredValue.Text(value) ?? "";
        if (value is string && text.Length > 0 && FormulaSigns.Contains(text[0], StringComparison.Ordinal)) text = "'" + text;
        return text.AsSpan().ContainsAny(",\"\r\n") ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
    }
}
