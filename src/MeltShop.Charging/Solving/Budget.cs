namespace MeltShop.Charging.Solving;

/// <summary>Time that a call may still take, and the wish of the caller to stop.</summary>
/// <param name="total">The time.</param>
/// <param name="cancellation">The wish.</param>
/// <param name="clock">By which the time passes; null for that of the system.</param>
internal sealed class Budget(TimeSpan total, CancellationToken cancellation, TimeProvider? clock = null)
{
    private readonly long started = (clock ?? TimeProvider.System).GetTimestamp();

    public CancellationToken Cancellation => cancellation;

    public TimeSpan Left => total - (clock ?? TimeProvider.System).GetElapsedTime(started);

    /// <summary>Half of the time that is left.</summary>
    public Budget Half() => new(Left / 2, cancellation, clock);

    /// <summary>What is left, or some time more where that is less.</summary>
    public Budget AtLeast(TimeSpan time) => new(Left > time ? Left : time, cancellation, clock);

    public bool IsSpent => Left <= TimeSpan.Zero;
}
