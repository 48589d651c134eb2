using System.Text;
using MeltShop.Records;
using MeltShop.Records.Backups;
using MeltShop.Records.Exchange;
using MeltShop.Records.Exchange.Archives;
using MeltShop.Web.Composition;

namespace MeltShop.Web.Commands;

/// <summary>Copies of all that a shop has: kept, put back, passed on, moved. Each is checked, or it is not made.</summary>
internal static class CopyCommands
{
    private const string SqliteSignature = "SQLite format 3";

    public static Task<int> BackupAsync(IServiceProvider services, string file)
    {
        var records = services.GetRequiredService<ShopSettings>().Records;
        return TellAsync(file, records.Provider == RecordsProvider.Sqlite
            ? new SqliteBackup(records).Write(file)
            : services.GetRequiredService<ArchiveWriter>().Backup(file));
    }

    public static async Task<int> RestoreAsync(IServiceProvider services, string file)
    {
        var records = services.GetRequiredService<ShopSettings>().Records;
        services.GetRequiredService<DatabasePreparation>().MakeFolder();
        if (!IsSqlite(file)) return await TellAsync(file, new ArchiveReader(records).Read(file));
        if (records.Provider == RecordsProvider.Sqlite) return await TellAsync(file, new SqliteBackup(records).Restore(file));
        await Console.Error.WriteLineAsync("This is a backup of a SQLite database, and the settings name PostgreSQL: the command move takes it there.");
        return 1;
    }

    public static Task<int> MoveAsync(IServiceProvider services, string file)
    {
        var records = services.GetRequiredService<ShopSettings>().Records;
        return records.Provider == RecordsProvider.Postgres
            ? TellAsync(file, new Moving(records).From(file))
            : throw new SettingsException("The command move fills a PostgreSQL database: set MeltShop:Database to postgres, and the connections.");
    }

    public static async Task<int> ExportAsync(IServiceProvider services, string file)
    {
        await services.GetRequiredService<DatabasePreparation>().PrepareAsync(CancellationToken.None);
        return await TellAsync(file, services.GetRequiredService<ArchiveWriter>().Export(file));
    }

    public static Task<int> ImportAsync(IServiceProvider services, string file)
    {
        services.GetRequiredService<DatabasePreparation>().MakeFolder();
        return TellAsync(file, new ArchiveReader(services.GetRequiredService<ShopSettings>().Records).Read(file));
    }

    private static async Task<int> TellAsync(string file, Task<BackupOutcome> copying)
    {
        var outcome = await copying;
        var words = outcome.State switch
        {
            BackupState.Done => null,
            BackupState.Occupied => "There is something already where it should go: nothing was written over.",
            BackupState.Missing => $"There is nothing to copy at {file}, or no database yet.",
            BackupState.Foreign => $"{file} is not from this program, or from a later version of it. {outcome.Detail}",
            _ => $"The copy was not made, because the trail does not hold or ends elsewhere than it should. {outcome.Detail}",
        };
        if (words is not null) await Console.Error.WriteLineAsync(words);
        if (outcome.Trail is { } trail) await VerifyCommand.TellAsync(trail);
        return outcome.State == BackupState.Done ? 0 : 1;
    }

    private static bool IsSqlite(string file)
    {
        if (!File.Exists(file)) return false;
        using var stream = File.OpenRead(file);
        var start = new byte[SqliteSignature.Length];
        return stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false) == start.Length && Encoding.ASCII.GetString(start) == SqliteSignature;
    }
}
