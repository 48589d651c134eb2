using System.IO.Compression;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using MeltShop.Records.Backups;
using MeltShop.Records.Keeping;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Exchange.Archives;

/// <summary>Writes everything that a shop owns into one file, in the open form that docs/EXCHANGE.md describes, while people work.</summary>
public sealed class ArchiveWriter(IDbContextFactory<RecordsContext> contexts, TimeProvider clock)
{
    private static readonly JsonWriterOptions Relaxed = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Everything, with what lets people and machines in: the backup of a database that is no file. The head of its trail is kept beside it.</summary>
    public Task<BackupOutcome> Backup(string file, CancellationToken ct = default) => Write(file, isBackup: true, ct);

    /// <summary>What may be passed on, with a sheet for each table.</summary>
    public Task<BackupOutcome> Export(string file, CancellationToken ct = default) => Write(file, isBackup: false, ct);

    private async Task<BackupOutcome> Write(string file, bool isBackup, CancellationToken ct)
    {
        if (File.Exists(file)) return new(BackupState.Occupied);
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(file))!);
        var unfinished = file + ".unfinished";
        try
        {
            await using var db = await contexts.CreateDbContextAsync(ct);
            await using var transaction = await db.BeginReading(ct);
            var trail = await TrailCheck.Run(db, [], ct);
            if (!trail.Holds) return new(BackupState.Broken, trail);
            await using (var stream = new FileStream(unfinished, FileMode.Create, FileAccess.ReadWrite))
            {
                await using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true)) await Fill(zip, db, BackupHead.Of(trail), isBackup, ct);
                stream.Flush(flushToDisk: true); // on the disk before it gets its name
            }

            if (isBackup) await BackupHead.Of(trail).Write(file, ct);
            File.Move(unfinished, file);
            return new(BackupState.Done, trail);
        }
        finally
        {
            File.Delete(unfinished);
        }
    }

    private async Task Fill(ZipArchive zip, RecordsContext db, BackupHead head, bool isBackup, CancellationToken ct)
    {
        var tables = new List<ArchiveTable>();
        foreach (var table in isBackup ? StoredTables.Of(db) : Secrets.Without(StoredTables.Of(db)))
        {
            tables.Add(new(table.Name, await Records(zip, db, table, ct), table.Columns, table.Key));
            if (!isBackup) await SheetOf(zip, db, table, ct);
        }

        var schema = MigrationName.Of((await db.Database.GetAppliedMigrationsAsync(ct)).Last());
        await using var contents = new StreamWriter(zip.CreateEntry(ArchiveContents.File).Open());
        await contents.WriteAsync(RecordsJson.Text(new ArchiveContents(ArchiveContents.Name, ArchiveContents.Current, schema, clock.Now(), isBackup, head, tables)));
    }

    private static async Task<long> Records(ZipArchive zip, RecordsContext db, StoredTable table, CancellationToken ct)
    {
        await using var lines = zip.CreateEntry(ArchiveContents.RecordsOf(table.Name)).Open();
        await using var json = new Utf8JsonWriter(lines, Relaxed);
        var count = 0L;
        await foreach (var row in StoredRows.Read(db, table, ct))
        {
            RowJson.Write(json, table, row);
            await json.FlushAsync(ct);
            lines.WriteByte((byte)'\n');
            json.Reset();
            count++;
        }

        return count;
    }

    private static async Task SheetOf(ZipArchive zip, RecordsContext db, StoredTable table, CancellationToken ct)
    {
        await using var sheet = new StreamWriter(zip.CreateEntry(ArchiveContents.SheetOf(table.Name)).Open(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
        await sheet.WriteAsync(Sheet.Line(table.Columns.Select(c => c.Name)));
        await foreach (var row in StoredRows.Read(db, table, ct)) await sheet.WriteAsync(Sheet.Line(row).AsMemory(), ct);
    }
}
