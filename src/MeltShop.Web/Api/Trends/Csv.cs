using System.Buffers;
using System.Globalization;
using System.Text;

namespace MeltShop.Web.Api.Trends;

/// <summary>Lines of values between commas (RFC 4180) that a spreadsheet opens without carrying anything out.</summary>
public static class Csv
{
    /// <summary>
    /// A line. Numbers have a point whatever the culture. A text that a spreadsheet would take for a formula gets an apostrophe before it
    /// (OWASP, CSV Injection, from memory).
    /// </summary>
    public static string Line(params IReadOnlyList<object?> values) => string.Join(',', values.Select(Cell)) + "\r\n";

    private static readonly SearchValues<char> Quotable = SearchValues.Create(",\"\r\n\t' ;");

    private static string Cell(object? value) => value switch
    {
        null => "",
        string text => Quoted(Harmless(text)),
        DateTimeOffset instant => instant.ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture),
        IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
        _ => throw new ArgumentException($"{value.GetType().Name} has no form here."),
    };

    private static string Harmless(string text) => text.Length > 0 && text.TrimStart() is var seen && (seen.Length == 0 || "=+-@".Contains(seen[0], StringComparison.Ordinal)
        || "\t\r\n".Contains(text[0], StringComparison.Ordinal)) ? "'" + text : text;

    private static string Quoted(string text) => !text.AsSpan().ContainsAny(Quotable) ? text : new StringBuilder("\"").Append(text.Replace("\"", "\"\"", StringComparison.Ordinal)).Append('"').ToString();
}
