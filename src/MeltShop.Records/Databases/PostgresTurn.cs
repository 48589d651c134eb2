using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Storage;
using Npgsql;

namespace MeltShop.Records.Databases;

/// <summary>
/// Lets one program at a time migrate a PostgreSQL database, over all its migrations: the framework's own lock ends with each of them, so that
/// two programs could do the next one twice. The lock is its connection's, and ends with a program that was killed.
/// </summary>
internal static class PostgresTurn
{
    public static async Task<IDisposable> Take(RecordsContext db, CancellationToken ct)
    {
        await MakeDatabase(db, ct);
        var connection = new NpgsqlConnection(new NpgsqlConnectionStringBuilder(db.Database.GetConnectionString()) { Pooling = false, CommandTimeout = 0 }.ConnectionString);
        try
        {
            await connection.OpenAsync(ct);
            await using var command = new NpgsqlCommand("SELECT pg_advisory_lock(hashtext('MeltShop migration'))", connection);
            await command.ExecuteNonQueryAsync(ct);
            return connection;
        }
        catch
        {
            await connection.DisposeAsync();
            throw;
        }
    }

    private static async Task MakeDatabase(RecordsContext db, CancellationToken ct)
    {
        var creator = db.GetService<IRelationalDatabaseCreator>();
        if (await creator.ExistsAsync(ct)) return;
        try
        {
            await creator.CreateAsync(ct);
        }
        catch (PostgresException e) when (e.SqlState is PostgresErrorCodes.DuplicateDatabase or PostgresErrorCodes.UniqueViolation)
        {
            // another program was faster
        }
    }
}
