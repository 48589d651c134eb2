using MeltShop.Records.Backups;
using MeltShop.Records.Databases;
using Microsoft.Data.Sqlite;

namespace MeltShop.Records.Exchange;

/// <summary>Moves a shop from its SQLite file into an empty PostgreSQL database, with all that it has: people and their passwords, keys, drafts.</summary>
public sealed class Moving(RecordsOptions target)
{
    /// <param name="file">The SQLite database; it is copied first and stays as it is.</param>
    /// <param name="ct">Given up before the end, the target stays empty.</param>
    public async Task<BackupOutcome> From(string file, CancellationToken ct = default)
    {
        if (!File.Exists(file)) return new(BackupState.Missing);
        var folder = Directory.CreateTempSubdirectory("meltshop-move-");
        try
        {
            var copy = Path.Combine(folder.FullName, "copy.db");
            var copied = await new SqliteBackup(Options(file)).Write(copy, ct);
            return copied.State == BackupState.Done ? await Fill(copy, BackupHead.Of(copied.Trail!), ct) : copied;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private async Task<BackupOutcome> Fill(string copy, BackupHead head, CancellationToken ct)
    {
        await using var from = new ContextFactory(Options(copy)).CreateDbContext();
        var tables = StoredTables.Of(from);
        var counts = new Dictionary<string, long>();
        foreach (var table in tables) counts[table.Name] = await StoredRows.Count(from, table.Name, ct);
        return await new EmptyDatabase(target).Fill(new(null, tables, table => StoredRows.Read(from, table, ct), counts, head), ct);
    }

    private static RecordsOptions Options(string file) => new()
    {
        Provider = RecordsProvider.Sqlite,
        ConnectionString = new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ConnectionString,
    };
}
