using System.Threading.RateLimiting;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Problems;
using Microsoft.AspNetCore.Http.Timeouts;

namespace MeltShop.Web.Api.Answering;

/// <summary>
/// Keeps calculations from taking the whole machine: pages of people at the furnace come first. So many are solved at once,
/// so many wait, the rest is sent away; and one that takes too long, waiting included, is given up. Whole pieces, whose search may take its whole
/// time, have seats of their own; what solves nothing needs none.
/// </summary>
internal sealed class CalculationBounds : IDisposable
{
    public const string Policy = "calculations";

    private const int Waiting = 256;
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);

    private readonly ConcurrencyLimiter plain = Limiter(Seats.Plain - 1);
    private readonly ConcurrencyLimiter pieces = Limiter(Seats.Pieces - 1);

    /// <summary>Waits for a seat; one that is not acquired is a refusal.</summary>
    /// <returns>Null where the question needs none.</returns>
    /// <exception cref="OperationCanceledException">The time is over, or nobody waits any more.</exception>
    public async ValueTask<RateLimitLease?> SeatAsync(object question, CancellationToken cancellation)
    {
        var materials = question switch
        {
            ChargeProblem charge => charge.Materials,
            CorrectionProblem correction => correction.Additions,
            _ => null,
        };
        return materials is null ? null : await (materials.Any(m => m.PieceKg is not null) ? pieces : plain).AcquireAsync(1, cancellation);
    }

    public void Dispose()
    {
        plain.Dispose();
        pieces.Dispose();
    }

    public static void AddTo(IServiceCollection services)
    {
        services.AddSingleton<CalculationBounds>();
        services.AddRequestTimeouts(options => options.AddPolicy(Policy, new RequestTimeoutPolicy
        {
            Timeout = Longest,
            TimeoutStatusCode = StatusCodes.Status504GatewayTimeout,
            WriteTimeoutResponse = http => ProblemAnswers.Refuse(
                StatusCodes.Status504GatewayTimeout, "The calculation took too long.", $"It was given up after {Longest.TotalSeconds} s.").ExecuteAsync(http),
        }));
    }

    private static ConcurrencyLimiter Limiter(int seats) => new(new() { PermitLimit = seats, QueueLimit = Waiting, QueueProcessingOrder = QueueProcessingOrder.OldestFirst });
}
