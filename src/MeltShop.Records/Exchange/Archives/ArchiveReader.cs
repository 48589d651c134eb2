using System.IO.Compression;
using System.Runtime.CompilerServices;
using System.Text.Json;
using MeltShop.Records.Backups;
using MeltShop.Records.Writing;

namespace MeltShop.Records.Exchange.Archives;

/// <summary>Puts what an archive holds into an empty database of either kind: an export into a new installation, a backup into its place.</summary>
public sealed class ArchiveReader(RecordsOptions target)
{
    public async Task<BackupOutcome> Read(string file, CancellationToken ct = default)
    {
        if (!File.Exists(file)) return new(BackupState.Missing);
        try
        {
            await using var zip = await ZipFile.OpenReadAsync(file, ct);
            if (await Contents(zip, ct) is not { Format: ArchiveContents.Name, Version: ArchiveContents.Current } contents)
                return new(BackupState.Foreign, Detail: $"There is no {ArchiveContents.File} of this format in it.");
            if (await BackupHead.Read(file, ct) is { } kept && kept != contents.Head)
                return new(BackupState.Broken, Detail: $"Its trail ends elsewhere than {BackupHead.FileOf(file)} says.");
            var counts = contents.Tables.ToDictionary(t => t.Name, t => t.Rows);
            return await new EmptyDatabase(target).Fill(
                new(contents.Schema, [.. contents.Tables.Select(t => t.Stored)], table => Rows(zip, table, ct), counts, contents.Head), ct);
        }
        catch (Exception e) when (e is InvalidDataException or JsonException)
        {
            return new(BackupState.Foreign, Detail: e.Message);
        }
    }

    private static async Task<ArchiveContents?> Contents(ZipArchive zip, CancellationToken ct)
    {
        if (zip.GetEntry(ArchiveContents.File) is not { } entry) return null;
        using var text = new StreamReader(await entry.OpenAsync(ct));
        return RecordsJson.Value<ArchiveContents>(await text.ReadToEndAsync(ct));
    }

    /// <summary>The lines of JSON where there are any, else the sheet of the table.</summary>
    private static IAsyncEnumerable<object?[]> Rows(ZipArchive zip, StoredTable table, CancellationToken ct)
    {
        var (records, sheet) = (ArchiveContents.RecordsOf(table.Name), ArchiveContents.SheetOf(table.Name));
        if (zip.GetEntry(records) is { } lines) return Lines(lines, table, ct);
        return zip.GetEntry(sheet) is { } cells ? Cells(cells, table, ct) : throw new InvalidDataException($"Neither {records} nor {sheet} is in it.");
    }

    private static async IAsyncEnumerable<object?[]> Lines(ZipArchiveEntry entry, StoredTable table, [EnumeratorCancellation] CancellationToken ct)
    {
        using var lines = new StreamReader(await entry.OpenAsync(ct));
        for (var number = 1L; await lines.ReadLineAsync(ct) is { } line; number++) yield return RowJson.Read(table, line, number);
    }

    private static async IAsyncEnumerable<object?[]> Cells(ZipArchiveEntry entry, StoredTable table, [EnumeratorCancellation] CancellationToken ct)
    {
        using var text = new StreamReader(await entry.OpenAsync(ct));
        await foreach (var row in SheetReading.Rows(table, text).WithCancellation(ct)) yield return row;
    }
}
