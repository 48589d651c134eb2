using System.Text.Json.Serialization;
using MeltShop.Records.Writing;

namespace MeltShop.Records.Backups;

/// <summary>The end of the trail when a backup was made, kept beside it: what was rewritten since does not end there.</summary>
public sealed record BackupHead(long Entries, string Hash)
{
    /// <summary>Where the head of a backup is kept.</summary>
    public static string FileOf(string backup) => backup + ".head.json";

    /// <summary>As it is looked for in a trail.</summary>
    [JsonIgnore]
    public TrailMark Mark => new(Entries, Hash);

    internal static BackupHead Of(TrailReport report) => new(report.Entries, report.HeadHash);

    internal static async Task<BackupHead?> Read(string backup, CancellationToken ct)
    {
        var file = FileOf(backup);
        return File.Exists(file) ? RecordsJson.Value<BackupHead>(await File.ReadAllTextAsync(file, ct)) : null;
    }

    internal Task Write(string backup, CancellationToken ct) => File.WriteAllTextAsync(FileOf(backup), RecordsJson.Text(this), ct);
}
