namespace MeltShop.Web.Watching;

/// <summary>Goes through the watched folder again and again while the program serves.</summary>
internal sealed class WatchedFolder(FolderRound round, TimeProvider clock, ILogger<WatchedFolder> log) : BackgroundService
{
    private static readonly TimeSpan LookAgain = TimeSpan.FromSeconds(5);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                await round.Run(stoppingToken);
            }
#pragma warning disable CA1031 // an absent disk or database must not stop the shop: the file stays where it is, and the log says it each time
            catch (Exception fault) when (fault is not OperationCanceledException)
#pragma warning restore CA1031
            {
                log.LogError(fault, "The watched folder could not be gone through");
            }

            await Task.Delay(LookAgain, clock, stoppingToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }
}

/// <summary>Puts the watched folder into the program, where the settings name one.</summary>
internal static class WatchedFolderServices
{
    public static void AddWatchedFolder(this IServiceCollection services, IConfiguration configuration)
    {
        services.AddSingleton<FileTaking>();
        services.AddSingleton<RefusedFiles>();
        if (WatchedSettings.From(configuration) is not { } settings) return;
        services.AddSingleton(settings);
        services.AddSingleton<FolderRound>();
        services.AddHostedService<WatchedFolder>();
    }
}
