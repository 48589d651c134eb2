using System.Diagnostics;

namespace MeltShop.Charging.Solving;

/// <summary>Time that a call may still take, and the wish of the caller to stop.</summary>
internal sealed class Budget(TimeSpan total, CancellationToken cancellation)
{
    private readonly long started = Stopwatch.GetTimestamp();

    public CancellationToken Cancellation => cancellation;

    public TimeSpan Left => total - Stopwatch.GetElapsedTime(started);

    /// <summary>Half of the time that is left.</summary>
    public Budget Half() => new(Left / 2, cancellation);

    /// <summary>What is left, or some time more where that is less.</summary>
    public Budget AtLeast(TimeSpan time) => new(Left > time ? Left : time, cancellation);

    public bool IsSpent => Left <= TimeSpan.Zero;
}
