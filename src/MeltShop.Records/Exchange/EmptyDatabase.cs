using MeltShop.Records.Backups;
using MeltShop.Records.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Exchange;

/// <summary>What is to be written into an empty database.</summary>
/// <param name="Migration">Name of the migration that made the tables; null for this program's own.</param>
/// <param name="Tables">In the order of their references.</param>
/// <param name="Rows">The rows of each table.</param>
/// <param name="Counts">How many rows each table has.</param>
/// <param name="Head">The end of the trail that comes with them.</param>
internal sealed record Filling(
    string? Migration, IReadOnlyList<StoredTable> Tables, Func<StoredTable, IAsyncEnumerable<object?[]>> Rows,
    IReadOnlyDictionary<string, long> Counts, BackupHead Head);

/// <summary>
/// A database where nobody has recorded anything, to be filled with all that another one held. It counts when every row has come and the trail
/// holds; otherwise it is left as empty as it was.
/// </summary>
internal sealed class EmptyDatabase(RecordsOptions options)
{
    private readonly RecordsOptions owner = options with { ConnectionString = options.OwnerConnection ?? options.ConnectionString };

    public async Task<BackupOutcome> Fill(Filling filling, CancellationToken ct)
    {
        await RecordsDatabase.MigrateAsync(options, ct);
        if (!await IsEmpty(ct)) return new(BackupState.Occupied);
        if (filling.Migration is { } name)
        {
            if (await Find(name, ct) is not { } migration)
                return new(BackupState.Foreign, Detail: $"It was made by a later version of this program, with the schema {name}.");
            await RecordsDatabase.MigrateAsync(options, migration, ct);
        }

        try
        {
            await Write(filling, ct);
            await RecordsDatabase.MigrateAsync(options, ct);
        }
        catch (InvalidDataException unreadable)
        {
            await Clear(ct);
            return new(BackupState.Foreign, Detail: unreadable.Message);
        }

        var trail = await new TrailCheck(new ContextFactory(owner)).Run([filling.Head.Mark], ct);
        if (trail.Holds && BackupHead.Of(trail) == filling.Head) return new(BackupState.Done, trail);
        await Clear(ct);
        return new(BackupState.Broken, trail);
    }

    private async Task Write(Filling filling, CancellationToken ct)
    {
        await using var db = new ContextFactory(owner).CreateDbContext();
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        await OneOfEach.Lift(db, ct); // what stood double there stands double here: it is looked at when all is in
        await db.TrailHeads.ExecuteDeleteAsync(ct); // the first migration put the head of an empty trail there
        foreach (var table in filling.Tables)
        {
            var written = await StoredWriting.Write(db, table, filling.Rows(table), ct);
            if (written != filling.Counts[table.Name])
                throw new InvalidDataException($"{table.Name}: {filling.Counts[table.Name]} rows were announced and {written} came.");
        }

        await transaction.CommitAsync(CancellationToken.None);
    }

    private async Task<bool> IsEmpty(CancellationToken ct)
    {
        await using var db = new ContextFactory(owner).CreateDbContext();
        foreach (var table in StoredTables.Of(db).Where(t => t.Name != nameof(RecordsContext.TrailHeads)))
        {
            if (await StoredRows.Count(db, table.Name, ct) > 0) return false;
        }

        return true;
    }

    /// <summary>The whole name of the migration on this database, null where this program has none of that name.</summary>
    private async Task<string?> Find(string name, CancellationToken ct)
    {
        await using var db = new ContextFactory(owner).CreateDbContext();
        return (await db.Database.GetAppliedMigrationsAsync(ct)).SingleOrDefault(m => MigrationName.Of(m) == name);
    }

    /// <summary>Takes the tables away and makes them anew: the triggers let nothing be deleted.</summary>
    private async Task Clear(CancellationToken ct)
    {
        await using (var db = new ContextFactory(owner).CreateDbContext())
        {
            await db.Database.OpenConnectionAsync(ct);
            var isSqlite = db.Database.IsSqlite();
            if (isSqlite) await db.Database.ExecuteSqlRawAsync("PRAGMA foreign_keys=OFF", ct); // on this connection, until it is closed
            foreach (var table in StoredTables.Of(db).Select(t => t.Name).Append("__EFMigrationsHistory"))
            {
                await using var drop = await StoredRows.Command(db, $"DROP TABLE \"{table}\" {(isSqlite ? "" : "CASCADE")}", ct);
                await drop.ExecuteNonQueryAsync(ct);
            }
        }

        await RecordsDatabase.MigrateAsync(options, ct);
    }
}
