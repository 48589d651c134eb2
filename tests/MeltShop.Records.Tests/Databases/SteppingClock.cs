namespace MeltShop.Records.Tests.Databases;

/// <summary>A clock that stands at a known instant and moves on by one microsecond and a bit at each look.</summary>
public sealed class SteppingClock : TimeProvider
{
    private long ticks = new DateTimeOffset(2026, 3, 2, 6, 0, 0, TimeSpan.Zero).Ticks;

    public override DateTimeOffset GetUtcNow() => new(Interlocked.Add(ref ticks, TimeSpan.TicksPerMicrosecond + 3), TimeSpan.Zero);
}
