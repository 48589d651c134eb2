using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Databases;

/// <summary>What a SQLite file needs before its tables can be made or changed.</summary>
internal static class SqliteFile
{
    private static readonly TimeSpan LookAgain = TimeSpan.FromMilliseconds(100);

    /// <summary>
    /// Makes the folder and the file, in WAL mode, and removes the lock row that a killed migration left. The turn that is returned
    /// is a lock of the operating system, which ends with the process that holds it: while it is ours, a lock row is nobody's.
    /// </summary>
    public static async Task<IDisposable> Prepare(RecordsContext db, TimeProvider clock, CancellationToken ct)
    {
        var file = Path.GetFullPath(new SqliteConnectionStringBuilder(db.Database.GetConnectionString()).DataSource);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        var turn = await Turn($"{file}-migrating", clock, ct);
        await db.Database.ExecuteSqlRawAsync("PRAGMA journal_mode=WAL", ct);
        var locks = await db.Database
            .SqlQuery<int>($"""SELECT COUNT(*) AS "Value" FROM sqlite_master WHERE name = '__EFMigrationsLock'""").ToListAsync(ct);
        if (locks.Single() > 0) await db.Database.ExecuteSqlRawAsync("""DELETE FROM "__EFMigrationsLock" """, ct);
        return turn;
    }

    private static async Task<IDisposable> Turn(string path, TimeProvider clock, CancellationToken ct)
    {
        while (true)
        {
            try
            {
                return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException) when (File.Exists(path))
            {
                await Task.Delay(LookAgain, clock, ct); // another process migrates this file
            }
        }
    }
}
