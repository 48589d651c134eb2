using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace MeltShop.Records.Databases;

/// <summary>
/// What SQLite keeps per connection, said on each: a commit is on the disk before it is acknowledged, references hold, and a
/// writer waits for another one in SQLite itself, which looks again sooner than the client library does.
/// </summary>
internal sealed class SqliteDurability : DbConnectionInterceptor
{
    private const string Settings = "PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON; PRAGMA busy_timeout=10000;";

    public static SqliteDurability Instance { get; } = new();

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Settings;
        command.ExecuteNonQuery();
    }

    public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        ConnectionOpened(connection, eventData); // SQLite has no asynchronous calls; waiting here costs no thread anything
        return Task.CompletedTask;
    }
}
