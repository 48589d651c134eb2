using System.Globalization;

namespace MeltShop.Operations.Importing.Maps;

/// <summary>The forms in which files write instants.</summary>
public static class TimeForms
{
    /// <summary>Offered first; any other may be typed.</summary>
    public static IReadOnlyList<string> Usual { get; } =
    [
        "yyyy-MM-dd HH:mm:ss", "yyyy-MM-dd HH:mm", "dd.MM.yyyy HH:mm:ss", "dd.MM.yyyy HH:mm", "dd/MM/yyyy HH:mm:ss", "dd/MM/yyyy HH:mm",
        "MM/dd/yyyy HH:mm:ss", "MM/dd/yyyy HH:mm", "yyyy-MM-ddTHH:mm:ssK",
    ];

    /// <summary>True where the form tells each day, hour and minute from every other.</summary>
    public static bool TellsAMinute(string? form)
    {
        // A form without a year reads as the current one: so this is an earlier one.
        var instant = new DateTime(2001, 11, 25, 16, 47, 0, DateTimeKind.Unspecified);
        try
        {
            var text = instant.ToString(form, CultureInfo.InvariantCulture);
            return !string.IsNullOrWhiteSpace(form)
                && DateTime.TryParseExact(text, form, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var read) && read == instant;
        }
        catch (FormatException)
        {
            return false;
        }
    }
}
