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
    public static async Task MigrateAsync(RecordsOptions options, CancellationToken ct = default)
    {
        ArgumentNullException.ThrowIfNull(options);
        await using var db = new ContextFactory(options with { ConnectionString = options.OwnerConnection ?? options.ConnectionString }).CreateDbContext();
        using var turn = options.Provider == RecordsProvider.Sqlite ? await SqliteFile.Prepare(db, TimeProvider.System, ct) : null;
        await db.Database.MigrateAsync(ct);
        await AppendOnlyTriggers.Apply(db, ct);
    }
}
