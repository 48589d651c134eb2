using MeltShop.Records;
using Microsoft.AspNetCore.Diagnostics.HealthChecks;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace MeltShop.Web.Composition;

/// <summary><c>/health/live</c>: the process answers. <c>/health/ready</c>: it can serve, database included.</summary>
internal static class Health
{
    public static void AddHealth(this IServiceCollection services) => services.AddHealthChecks().AddCheck<DatabaseAnswers>("database");

    public static void MapHealth(this IEndpointRouteBuilder routes)
    {
        routes.MapHealthChecks("/health/live", new HealthCheckOptions { Predicate = _ => false }).AllowAnonymous();
        routes.MapHealthChecks("/health/ready").AllowAnonymous();
    }

    private sealed class DatabaseAnswers(IDbContextFactory<RecordsContext> contexts) : IHealthCheck
    {
        public async Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
        {
            await using var records = await contexts.CreateDbContextAsync(cancellationToken);
            return await records.Database.CanConnectAsync(cancellationToken)
                ? HealthCheckResult.Healthy()
                : HealthCheckResult.Unhealthy("The database does not answer.");
        }
    }
}
