namespace MeltShop.Web.Tests.Pages;

/// <summary>Each look is a millisecond after the one before, so that a busy machine makes nothing older; it stands where a test sets it.</summary>
public sealed class SetClock : TimeProvider
{
    private long ticks = new DateTimeOffset(2026, 11, 27, 8, 0, 0, TimeSpan.Zero).Ticks;

    public DateTimeOffset? At { get; set; }

    public override DateTimeOffset GetUtcNow() => At ?? new(Interlocked.Add(ref ticks, TimeSpan.TicksPerMillisecond), TimeSpan.Zero);

    /// <summary>Goes on from here.</summary>
    public void GoOnFrom(DateTimeOffset instant) => Interlocked.Exchange(ref ticks, instant.Ticks);
}
