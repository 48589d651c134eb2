using MeltShop.Records.Databases;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records;

/// <summary>Brings the database to the form that this version of the program needs.</summary>
public static class RecordsDatabase
{
    /// <summary>
    /// Creates what is missing and moves what is older forward, under the owner's connection where there is one. A lock that a
    /// killed program left in a SQLite file is removed first: nothing else would ever remove it, and the start would wait for ever.
    /// </summary>
    public static Task MigrateAsync(RecordsOptions options, CancellationToken ct = default) => MigrateAsync(options, null, ct);

    /// <param name="options">Which database.</param>
    /// <param name="to">The migration to stop at, or to go back to; null goes on to the last.</param>
    /// <param name="ct">Stops.</param>
    internal static async Task MigrateAsync(RecordsOptions options, string? to, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(options);
        await using var db = new ContextFactory(options with { ConnectionString = options.OwnerConnection ?? options.ConnectionString }).CreateDbContext();
        using var turn = options.Provider == RecordsProvider.Sqlite ? await SqliteFile.Prepare(db, TimeProvider.System, ct) : await PostgresTurn.Take(db, ct);
        if (to is not null) await OneOfEach.Lift(db, ct);
        await db.Database.MigrateAsync(to, ct);
        if (to is not null) return;
        await AppendOnlyTriggers.Apply(db, ct);
        await OneOfEach.Apply(db, ct);
        if (options.Provider == RecordsProvider.Postgres) await RoleRights.Apply(db, RoleRights.AppOf(options), ct);
    }
}
