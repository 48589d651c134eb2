namespace MeltShop.Web.Watching;

/// <summary>A file of the watched folder that was not taken in and waits for a person.</summary>
/// <param name="Report">The first lines of why.</param>
/// <param name="IsMore">The report is longer.</param>
public sealed record RefusedFile(string Name, DateTimeOffset At, IReadOnlyList<string> Report, bool IsMore);

/// <summary>What lies in <c>refused</c> of the watched folder: who looks at the imports must not have to look into a disk for what did not come in.</summary>
internal sealed class RefusedFiles(IConfiguration configuration)
{
    public const int Most = 50;

    private const int MostLines = 20;
    private const string Report = ".report.txt";

    /// <summary>The latest first; at most one more than <see cref="Most"/>, none where no folder is watched.</summary>
    public IReadOnlyList<RefusedFile> Load()
    {
        if (WatchedSettings.From(configuration) is not { } settings) return [];
        var folder = new DirectoryInfo(Path.Combine(settings.Folder, FolderRound.Refused));
        try
        {
            return !folder.Exists ? [] : [.. folder.EnumerateFiles("*" + Report).Where(report => File.Exists(Reported(report))).OrderByDescending(report => report.LastWriteTimeUtc).Take(Most + 1).Select(Read)];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // Somebody takes one out while we look: the next look has what is left.
            return [];
        }
    }

    private static string Reported(FileInfo report) => report.FullName[..^Report.Length];

    private static RefusedFile Read(FileInfo report)
    {
        var lines = File.ReadLines(report.FullName).Where(line => line.Length > 0).Take(MostLines + 1).ToList();
        return new(Path.GetFileName(Reported(report)), report.LastWriteTimeUtc, [.. lines.Take(MostLines)], lines.Count > MostLines);
    }
}
