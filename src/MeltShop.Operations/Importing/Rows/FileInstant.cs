using System.Globalization;
using MeltShop.Operations.Importing.Files;

namespace MeltShop.Operations.Importing.Rows;

/// <summary>When a coin was taken, as the file says: in the form of the map, in the site's time zone where the text has no offset.</summary>
internal sealed class FileInstant(string form, TimeZoneInfo zone)
{
    private readonly bool hasOffset = form.Contains('z', StringComparison.Ordinal) || form.Contains('K', StringComparison.Ordinal);

    private (string? Text, (DateTimeOffset Instant, string? Code) Read) last;

    /// <returns>The instant in UTC, or the code of what is wrong: an hour that the clocks jumped over, or one that they went through twice.</returns>
    public (DateTimeOffset Instant, string? Code) Read(IReadOnlyList<Cell> cells)
    {
        if (cells is [{ Value: DateTime value }]) return Local(DateTime.SpecifyKind(value, DateTimeKind.Unspecified));
        if (cells.Any(c => c.Value is not null)) return (default, "importTime.unreadable");
        var text = cells.Count == 1 ? cells[0].Text.Trim() : string.Join(' ', cells.Select(c => c.Text.Trim()));
        if (text != last.Text) last = (text, Parse(text)); // the burns of a sample follow one another
        return last.Read;
    }

    private (DateTimeOffset Instant, string? Code) Parse(string text)
    {
        if (hasOffset)
        {
            return DateTimeOffset.TryParseExact(text, form, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var instant)
                ? (instant.ToUniversalTime(), null)
                : (default, "importTime.unreadable");
        }

        return DateTime.TryParseExact(text, form, CultureInfo.InvariantCulture, DateTimeStyles.None, out var local)
            ? Local(DateTime.SpecifyKind(local, DateTimeKind.Unspecified))
            : (default, "importTime.unreadable");
    }

    private (DateTimeOffset Instant, string? Code) Local(DateTime local)
    {
        if (local.Year is < 1950 or > 9000) return (default, "importTime.unreadable");
        if (zone.IsInvalidTime(local)) return (default, "importTime.never");
        if (zone.IsAmbiguousTime(local)) return (default, "importTime.twice");
        return (new DateTimeOffset(local, zone.GetUtcOffset(local)).ToUniversalTime(), null);
    }
}
