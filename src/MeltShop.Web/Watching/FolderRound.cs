using MeltShop.Operations.Importing.Files;

namespace MeltShop.Web.Watching;

/// <summary>
/// Goes through the watched folder once. A file is taken when it has not changed since the round before and nobody holds it open:
/// an instrument may be writing it still. It ends up in <c>done</c> or <c>refused</c>, with a report beside it. One whose taking fails stays
/// where it is, and keeps back none behind it.
/// </summary>
internal sealed class FolderRound(WatchedSettings settings, FileTaking taking, TimeProvider clock)
{
    /// <summary>Where lies what was not taken in.</summary>
    public const string Refused = "refused";

    private Dictionary<string, (long Bytes, DateTime WrittenAt)> before = [];

    /// <exception cref="AggregateException">Files could not be taken; the others were.</exception>
    public async Task Run(CancellationToken ct)
    {
        var faults = new List<Exception>();
        Directory.CreateDirectory(settings.Folder);
        var now = new Dictionary<string, (long, DateTime)>();
        foreach (var file in new DirectoryInfo(settings.Folder).EnumerateFiles().Where(f => !f.Name.StartsWith('.')).OrderBy(f => f.Name, StringComparer.Ordinal).ToList())
        {
            now[file.Name] = (file.Length, file.LastWriteTimeUtc);
            if (!before.TryGetValue(file.Name, out var seen) || seen != now[file.Name]) continue;
            if (await Content(file, ct) is not { } bytes) continue;
            try
            {
                var (isTaken, report) = await taking.Take(settings, file.Name, bytes, ct);
                Away(file, isTaken ? "done" : Refused, report);
                now.Remove(file.Name);
            }
#pragma warning disable CA1031 // whatever is wrong with one file, those behind it are other files
            catch (Exception fault) when (fault is not OperationCanceledException)
#pragma warning restore CA1031
            {
                faults.Add(new InvalidOperationException($"{file.Name} could not be taken.", fault));
            }
        }

        before = now;
        if (faults.Count > 0) throw new AggregateException(faults);
    }

    /// <summary>Null while somebody else has it open; a file that is too large is not read to its end.</summary>
    private static async Task<byte[]?> Content(FileInfo file, CancellationToken ct)
    {
        try
        {
            await using var stream = new FileStream(file.FullName, FileMode.Open, FileAccess.Read, FileShare.None);
            var bytes = new byte[(int)Math.Min(stream.Length, FileBounds.MostBytes + 1L)];
            await stream.ReadExactlyAsync(bytes, ct);
            return bytes;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>The report is written first: a file in one of the folders has one.</summary>
    private void Away(FileInfo file, string where, string report)
    {
        var folder = Directory.CreateDirectory(Path.Combine(settings.Folder, where)).FullName;
        var target = Path.Combine(folder, file.Name);
        if (File.Exists(target)) target = Path.Combine(folder, $"{clock.GetUtcNow():yyyyMMdd-HHmmssfff}-{file.Name}");
        File.WriteAllText(target + ".report.txt", report);
        file.MoveTo(target);
    }
}
