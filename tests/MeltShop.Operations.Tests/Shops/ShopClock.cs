namespace MeltShop.Operations.Tests.Shops;

/// <summary>A clock that stands until the test moves it; each look is a microsecond later, so that no two facts share an instant.</summary>
public sealed class ShopClock : TimeProvider
{
    private long ticks = new DateTimeOffset(2026, 3, 2, 6, 0, 0, TimeSpan.Zero).Ticks;

    public override DateTimeOffset GetUtcNow() => new(Interlocked.Add(ref ticks, TimeSpan.TicksPerMicrosecond), TimeSpan.Zero);

    /// <summary>Another one that stands where this one stands.</summary>
    public ShopClock Copy() => new() { ticks = Interlocked.Read(ref ticks) };

    public void Advance(double minutes) => Interlocked.Add(ref ticks, TimeSpan.FromMinutes(minutes).Ticks);
}
