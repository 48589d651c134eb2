using MeltShop.Records;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Composition;

/// <summary>Writes the end of the trail into a file outside the database, once a day, so that a trail that somebody made anew is found out.</summary>
internal sealed class DailyHead(
    ShopSettings settings, IConfiguration configuration, IDbContextFactory<RecordsContext> contexts, TimeProvider clock, ILogger<DailyHead> log) : BackgroundService
{
    private static readonly TimeSpan LookAgain = TimeSpan.FromMinutes(15);

    /// <summary>The setting <c>MeltShop:TrailHeads</c> may name a file on another machine's disk.</summary>
    private string FileName => configuration["MeltShop:TrailHeads"] is { Length: > 0 } named ? named : Path.Combine(settings.DataFolder, "trail-heads.jsonl");

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                await KeptHeads.AddDaily(FileName, contexts, clock.GetUtcNow(), stoppingToken);
            }
#pragma warning disable CA1031 // a full or absent disk must not stop the shop; the log says it each time
            catch (Exception fault) when (fault is not OperationCanceledException)
#pragma warning restore CA1031
            {
                log.LogError(fault, "The end of the trail could not be written to {File}", FileName);
            }

            await Task.Delay(LookAgain, clock, stoppingToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }
}
