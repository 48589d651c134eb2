using System.Globalization;
using System.Text.RegularExpressions;

namespace MeltShop.Records.Writing;

/// <summary>
/// An end that the trail had at some time, as it was printed or kept elsewhere: the trail must still pass through it. Written
/// <c>161-9f3a…</c>, the number of the entry and its hash, of which at least the first 16 digits are needed; the number may be missing.
/// </summary>
public sealed partial record TrailMark(long? Number, string Hash)
{
    /// <summary>Null where the text is no mark.</summary>
    public static TrailMark? Read(string? text)
    {
        var match = Form().Match(text?.Trim().ToLowerInvariant() ?? "");
        if (!match.Success) return null;
        return new(match.Groups[1].Success ? long.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) : null, match.Groups[2].Value);
    }

    public override string ToString() => Number is { } number ? string.Create(CultureInfo.InvariantCulture, $"{number}-{Hash}") : Hash;

    internal bool IsAt(long number, string hash) => (Number is null || Number == number) && hash.StartsWith(Hash, StringComparison.Ordinal);

    [GeneratedRegex(@"^(?:(\d{1,18})[-\s]+)?([0-9a-f]{16,64})$")]
    private static partial Regex Form();
}
