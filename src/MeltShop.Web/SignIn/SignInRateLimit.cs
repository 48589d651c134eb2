using System.Threading.RateLimiting;

namespace MeltShop.Web.SignIn;

/// <summary>Slows down whoever tries many names and passwords; the lock of an account slows down many passwords for one name.</summary>
internal static class SignInRateLimit
{
    public const string Policy = "sign-in";

    // A hand-over of a whole shift at one address fits; a list of passwords does not.
    private const int Attempts = 30;
    private static readonly TimeSpan Window = TimeSpan.FromMinutes(1);

    public static void AddSignInRateLimit(this IServiceCollection services) => services.AddRateLimiter(options =>
        options.AddPolicy(Policy, http => RateLimitPartition.GetFixedWindowLimiter(
            http.Connection.RemoteIpAddress?.ToString() ?? "",
            _ => new() { PermitLimit = Attempts, Window = Window })));
}
