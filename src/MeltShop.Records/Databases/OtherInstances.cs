using System.Text.Json;
using MeltShop.Records.Writing;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Npgsql;

namespace MeltShop.Records.Databases;

/// <summary>
/// Hears on PostgreSQL what other instances of the program committed, and passes it to who listens in this one. The server keeps nothing for
/// a connection that was cut, so after each connection everything counts as changed: drafts too, which leave no row in the trail to catch up by.
/// </summary>
public sealed class OtherInstances(RecordsOptions options, ChangeNotices notices, TimeProvider clock, ILogger<OtherInstances> log) : BackgroundService
{
    private const string Channel = "meltshop_changes";

    /// <summary>A notification holds less than 8000 bytes, a notice some 100.</summary>
    private const int MostInOne = 50;

    /// <summary>How long after a cut the next connection is tried.</summary>
    public static TimeSpan TryAgain { get; } = TimeSpan.FromSeconds(1);

    /// <summary>What a transaction sends: one text or several, heard when it commits and not before.</summary>
    internal static string[] Texts(Guid from, IReadOnlyList<ChangeNotice> changes) =>
        [.. changes.Distinct().Chunk(MostInOne).Select(some => RecordsJson.Text(new Told(from, some)))];

    internal static FormattableString Sending(string[] texts) => $"SELECT pg_notify({Channel}, told) FROM unnest({texts}) AS told";

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                await Hear(stoppingToken);
            }
            catch (Exception fault) when (fault is NpgsqlException or IOException or TimeoutException)
            {
                log.LogWarning(fault, "Changes of other instances are not heard; trying again");
            }
            catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
            {
                return;
            }

            await Task.Delay(TryAgain, clock, stoppingToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }

    /// <summary>A connection of its own: one from the pool would go back with its listening. Kept alive, so that a cut is noticed.</summary>
    private async Task Hear(CancellationToken ct)
    {
        var own = new NpgsqlConnectionStringBuilder(options.ConnectionString) { Pooling = false, KeepAlive = 15 };
        await using var connection = new NpgsqlConnection(own.ConnectionString);
        connection.Notification += (_, told) => Take(told.Payload);
        await connection.OpenAsync(ct);
        await using (var listen = new NpgsqlCommand($"LISTEN {Channel}", connection)) await listen.ExecuteNonQueryAsync(ct);
        notices.Publish(ChangeNotice.Anything);
        while (true) await connection.WaitAsync(ct);
    }

    private void Take(string text)
    {
        try
        {
            if (RecordsJson.Value<Told>(text) is { } told && told.From != notices.Source) notices.Publish(told.Changes);
        }
        catch (JsonException)
        {
            notices.Publish(ChangeNotice.Anything); // of another version of the program
        }
    }

    private sealed record Told(Guid From, IReadOnlyList<ChangeNotice> Changes);
}
