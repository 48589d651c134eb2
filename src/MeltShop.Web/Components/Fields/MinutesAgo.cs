namespace MeltShop.Web.Components.Fields;

/// <summary>When something was observed that is entered later: a late entry is honest about it.</summary>
internal static class MinutesAgo
{
    /// <summary>Two days: beyond it nobody remembers the minute.</summary>
    private const double Most = 2880;

    public static QuantityEntry Field(EntryForm form) => form.Quantity("observedAt", 0, Most);

    /// <summary>The instant that the field says; now where it is empty.</summary>
    public static DateTimeOffset Before(this QuantityEntry minutes, DateTimeOffset now) => now - TimeSpan.FromMinutes(minutes.Value ?? 0);
}
