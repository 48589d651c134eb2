using System.Threading.RateLimiting;

namespace MeltShop.Web.SignIn;

/// <summary>How often a PIN may be tried: a few digits are quickly guessed. Counted by the name that is claimed, wherever it is tried.</summary>
internal sealed class PinAttempts : IDisposable
{
    public const int Most = 5;
    private static readonly TimeSpan Within = TimeSpan.FromMinutes(5);

    private readonly PartitionedRateLimiter<string> limiter = PartitionedRateLimiter.Create<string, string>(name =>
        RateLimitPartition.GetFixedWindowLimiter(name, _ => new() { PermitLimit = Most, Window = Within }));

    /// <summary>Counts an attempt; false where there were too many.</summary>
    public bool May(string userName)
    {
        using var lease = limiter.AttemptAcquire(userName.ToUpperInvariant());
        return lease.IsAcquired;
    }

    public void Dispose() => limiter.Dispose();
}
