using System.Globalization;
using MeltShop.Records.Reading.History;

namespace MeltShop.Web.Pages.History;

/// <summary>Places, days and instants of the history as they stand in an address.</summary>
internal static class HistoryAddress
{
    private const string DayForm = "yyyy-MM-dd";
    private const string InstantForm = "yyyy-MM-dd'T'HH:mm:ss.ffffff'Z'";

    /// <summary>The last row of the page before: microseconds since 1970 and id.</summary>
    public static string Write(HistoryPlace place) => string.Create(
        CultureInfo.InvariantCulture, $"{(place.StartedAt - DateTimeOffset.UnixEpoch).Ticks / TimeSpan.TicksPerMicrosecond}-{place.Id}");

    /// <summary>Null where it is not a place: an address that somebody mangled shows the newest page.</summary>
    public static HistoryPlace? ReadPlace(string? text)
    {
        var parts = (text ?? "").Split('-');
        return parts.Length == 2
            && long.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var microseconds) && microseconds < 253_402_300_800_000_000
            && long.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var id)
            ? new HistoryPlace(DateTimeOffset.UnixEpoch.AddTicks(microseconds * TimeSpan.TicksPerMicrosecond), id) : null;
    }

    /// <summary>A day as the browser's date field writes it, <c>2026-03-31</c>; null where it is none, or one that no shop has records of.</summary>
    public static DateOnly? ReadDay(string? text) =>
        DateOnly.TryParseExact(text, DayForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) && day.Year is > 1900 and < 2200 ? day : null;

    /// <summary>The same, written.</summary>
    public static string Write(DateOnly day) => day.ToString(DayForm, CultureInfo.InvariantCulture);

    /// <summary>An instant to the microsecond, as it is kept, of the world's clock: <c>2026-03-31T06:05:00.000000Z</c>.</summary>
    public static string Write(DateTimeOffset instant) => instant.UtcDateTime.ToString(InstantForm, CultureInfo.InvariantCulture);

    /// <summary>Null where it is not an instant written so.</summary>
    public static DateTimeOffset? ReadInstant(string? text) =>
        DateTimeOffset.TryParseExact(text, InstantForm, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var instant) && instant.Year is > 1900 and < 2200 ? instant : null;
}
