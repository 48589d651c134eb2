using System.Globalization;
using System.Text.Json;

namespace MeltShop.Web.Api.Reading;

internal sealed partial class ObjectReader
{
    /// <summary>Yes or no; null, and a finding, where it is neither. Absent is null without a finding.</summary>
    public bool? Flag(string name)
    {
        if (Find(name) is not { } value) return null;
        if (value.ValueKind is JsonValueKind.True or JsonValueKind.False) return value.GetBoolean();
        Report(name, "flag.wrongKind");
        return null;
    }

    /// <summary>An instant with its offset, as RFC 3339 writes it; null, and a finding, where it is none. Absent is null without a finding.</summary>
    public DateTimeOffset? Instant(string name)
    {
        if (Text(name) is not { } text) return null;
        var isRead = DateTimeOffset.TryParseExact(
            text, ["yyyy-MM-dd'T'HH:mm:ssK", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFK"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var instant);
        if (isRead && (text.EndsWith('Z') || text[^6] is '+' or '-')) return instant;
        Report(name, "instant.unreadable", text);
        return null;
    }
}
