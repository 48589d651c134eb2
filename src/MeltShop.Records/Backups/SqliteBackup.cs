using MeltShop.Records.Databases;
using MeltShop.Records.Writing;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Backups;

/// <summary>
/// Copies a SQLite database while people work, and puts a copy back into an empty place. A copy counts when its trail holds: it is
/// checked before it gets its name, and again before it is used.
/// </summary>
public sealed class SqliteBackup(RecordsOptions options)
{
    private const string Unfinished = ".unfinished";

    /// <summary>Writes one state of the database to a new file, and the head of its trail beside it.</summary>
    public async Task<BackupOutcome> Write(string file, CancellationToken ct = default)
    {
        if (File.Exists(file)) return new(BackupState.Occupied);
        var database = DatabaseFile();
        if (!File.Exists(database)) return new(BackupState.Missing);

        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(file))!);
        return await Finish(database, file, null, ct);
    }

    /// <summary>Puts a backup in the place of the database, where there must be none yet, and brings it to this program's schema.</summary>
    public async Task<BackupOutcome> Restore(string file, CancellationToken ct = default)
    {
        if (!File.Exists(file)) return new(BackupState.Missing);
        var database = DatabaseFile();
        if (File.Exists(database)) return new(BackupState.Occupied);

        Directory.CreateDirectory(Path.GetDirectoryName(database)!);
        return await Finish(file, database, await BackupHead.Read(file, ct), ct);
    }

    /// <param name="from">The database or the backup.</param>
    /// <param name="to">The new file.</param>
    /// <param name="known">Where the trail has to end; null for a backup, which writes it down.</param>
    /// <param name="ct">Given up, nothing is left behind.</param>
    private static async Task<BackupOutcome> Finish(string from, string to, BackupHead? known, CancellationToken ct)
    {
        var copy = to + Unfinished;
        try
        {
            Copy(from, copy);
            var checkedCopy = Options(copy);
            if (!await IsOurs(checkedCopy, ct)) return new(BackupState.Foreign);
            await RecordsDatabase.MigrateAsync(checkedCopy, ct);
            var trail = await new TrailCheck(new ContextFactory(checkedCopy)).Run(ct);
            if (!trail.Holds || (known is not null && known != BackupHead.Of(trail))) return new(BackupState.Broken, trail);
            if (known is null) await BackupHead.Of(trail).Write(to, ct);
            File.Move(copy, to);
            return new(BackupState.Done, trail);
        }
        catch (SqliteException e) when (e.SqliteErrorCode == SQLitePCL.raw.SQLITE_NOTADB)
        {
            return new(BackupState.Foreign);
        }
        finally
        {
            foreach (var left in new[] { copy, $"{copy}-wal", $"{copy}-shm", $"{copy}-migrating" }) File.Delete(left);
        }
    }

    /// <summary>True where this program, or an earlier version of it, has made the tables.</summary>
    private static async Task<bool> IsOurs(RecordsOptions copy, CancellationToken ct)
    {
        await using var db = new ContextFactory(copy).CreateDbContext();
        var applied = (await db.Database.GetAppliedMigrationsAsync(ct)).ToList();
        return applied.Count > 0 && applied.All(db.Database.GetMigrations().Contains);
    }

    /// <summary>SQLite's own copying: one state, whatever is written meanwhile; a plain copy of the file would tear.</summary>
    private static void Copy(string from, string to)
    {
        using var source = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = from, Pooling = false, Mode = SqliteOpenMode.ReadWrite }.ConnectionString);
        using var target = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = to, Pooling = false }.ConnectionString);
        source.Open();
        target.Open();
        source.BackupDatabase(target);
    }

    private static RecordsOptions Options(string file) => new()
    {
        Provider = RecordsProvider.Sqlite,
        ConnectionString = new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ConnectionString,
    };

    private string DatabaseFile() => options.Provider == RecordsProvider.Sqlite
        ? Path.GetFullPath(new SqliteConnectionStringBuilder(options.ConnectionString).DataSource)
        : throw new InvalidOperationException("A PostgreSQL database is no file: it is copied into an archive.");
}
