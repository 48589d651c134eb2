namespace MeltShop.Records.Keeping;

/// <summary>Instants as the records keep them: UTC, whole microseconds, so that both databases hold the same.</summary>
public static class Instants
{
    /// <summary>The same instant in UTC, cut to whole microseconds.</summary>
    public static DateTimeOffset Cut(this DateTimeOffset instant)
    {
        var ticks = instant.UtcTicks;
        return new DateTimeOffset(ticks - (ticks % TimeSpan.TicksPerMicrosecond), TimeSpan.Zero);
    }

    /// <summary>Now, as the records keep it.</summary>
    public static DateTimeOffset Now(this TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(clock);
        return clock.GetUtcNow().Cut();
    }
}
