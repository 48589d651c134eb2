using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Http.Timeouts;

namespace MeltShop.Web.Api.Answering;

/// <summary>
/// Keeps calculations from taking the whole machine: pages of people at the furnace come first. So many are solved at once,
/// so many wait, the rest is sent away; and one that takes too long is given up.
/// </summary>
internal static class CalculationBounds
{
    public const string Policy = "calculations";

    private const int Waiting = 256;
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);

    public static void AddCalculationBounds(this IServiceCollection services)
    {
        services.AddRateLimiter(options => options.AddPolicy(Policy, _ => RateLimitPartition.GetConcurrencyLimiter(Policy, _ => new()
        {
            PermitLimit = Math.Max(2, Environment.ProcessorCount),
            QueueLimit = Waiting,
            QueueProcessingOrder = QueueProcessingOrder.OldestFirst,
        })));
        services.AddRequestTimeouts(options => options.AddPolicy(Policy, new RequestTimeoutPolicy
        {
            Timeout = Longest,
            TimeoutStatusCode = StatusCodes.Status504GatewayTimeout,
            WriteTimeoutResponse = http => ProblemAnswers.Refuse(
                StatusCodes.Status504GatewayTimeout, "The calculation took too long.", $"It was given up after {Longest.TotalSeconds} s.").ExecuteAsync(http),
        }));
    }
}
