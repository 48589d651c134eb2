using System.Globalization;
using MeltShop.Operations.Importing.Maps;

namespace MeltShop.Operations.Importing.Rows;

/// <summary>A value as an instrument wrote it.</summary>
/// <param name="Value">In the file's unit; with <paramref name="IsBelow"/> the limit of detection.</param>
/// <param name="IsBelow">A <c>&lt;</c> stood before it: the instrument saw less than it can tell from nothing.</param>
/// <param name="Code">Why it is none, or null.</param>
internal readonly record struct FileNumber(double Value, bool IsBelow, string? Code)
{
    /// <summary>
    /// Reads a text by the file's decimal sign. The other sign is refused and never taken for one between thousands; no text is guessed at.
    /// </summary>
    public static FileNumber Read(string text, DecimalSign sign)
    {
        var rest = text.AsSpan().Trim();
        var isBelow = rest is ['<', ..];
        if (isBelow) rest = rest[1..].TrimStart();
        var (own, other) = sign == DecimalSign.Comma ? (',', '.') : ('.', ',');
        if (rest.Contains(other)) return new(0, isBelow, "importNumber.otherSign");
        if (!IsPlain(rest, own)) return new(0, isBelow, "importNumber.unreadable");
        Span<char> digits = stackalloc char[rest.Length];
        rest.CopyTo(digits);
        digits.Replace(',', '.');
        return double.TryParse(digits, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? new(value, isBelow, null)
            : new(0, isBelow, "importNumber.unreadable");
    }

    /// <summary>An optional minus, digits, and digits after at most one decimal sign; 30 signs at most.</summary>
    private static bool IsPlain(ReadOnlySpan<char> text, char sign)
    {
        if (text is ['-', .. var positive]) text = positive;
        if (text.Length is 0 or > 30) return false;
        var at = text.IndexOf(sign);
        return at < 0 ? IsDigits(text) : IsDigits(text[..at]) && IsDigits(text[(at + 1)..]);
    }

    private static bool IsDigits(ReadOnlySpan<char> text) => text.Length > 0 && !text.ContainsAnyExceptInRange('0', '9');
}
