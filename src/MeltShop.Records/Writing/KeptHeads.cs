using System.Text;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Writing;

/// <summary>An end of the trail that was kept outside the database.</summary>
public sealed record KeptHead(DateTimeOffset At, long Entries, string Hash);

/// <summary>
/// A file of ends of the trail, one a line: what was rewritten before the last of them does not pass through them. It is worth most where nobody
/// who can write to the database can write to it.
/// </summary>
public static class KeptHeads
{
    /// <summary>Adds the end as it is now, unless the day has one or there is nothing yet.</summary>
    /// <returns>What was added, or null.</returns>
    public static async Task<KeptHead?> AddDaily(string file, IDbContextFactory<RecordsContext> contexts, DateTimeOffset now, CancellationToken ct = default)
    {
        ArgumentNullException.ThrowIfNull(contexts);
        var text = File.Exists(file) ? Encoding.Latin1.GetString(await File.ReadAllBytesAsync(file, ct)) : ""; // a character a byte
        var lines = text.Split('\n');
        var last = lines.Select(Head).LastOrDefault(h => h is not null);
        if (last?.At.UtcDateTime.Date == now.UtcDateTime.Date) return null;
        await using var db = await contexts.CreateDbContextAsync(ct);
        var head = await db.TrailHeads.AsNoTracking().SingleAsync(ct);
        if (head.Number == 0) return null;
        var kept = new KeptHead(now, head.Number, head.Hash);
        await Add(file, text.Length - (Head(lines[^1]) is null ? lines[^1].Length : 0), kept, ct);
        return kept;
    }

    /// <summary>The heads in a file of this class, or in one beside a backup.</summary>
    /// <exception cref="InvalidDataException">A line is none; the message says which.</exception>
    public static async Task<IReadOnlyList<KeptHead>> Read(string file, CancellationToken ct = default)
    {
        var heads = new List<KeptHead>();
        foreach (var (number, line) in (await File.ReadAllLinesAsync(file, ct)).Index().Where(l => l.Item.Length > 0))
            heads.Add(Head(line) ?? throw new InvalidDataException($"{file}, line {number + 1}: not the end of a trail."));
        return heads;
    }

    /// <summary>On a line of its own, and onto the disk. What a power cut left half written behind the last whole line is written over.</summary>
    private static async Task Add(string file, int end, KeptHead head, CancellationToken ct)
    {
        await using var stream = new FileStream(file, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.Read);
        stream.SetLength(end);
        stream.Position = Math.Max(0, end - 1);
        var isOnItsOwn = end == 0 || stream.ReadByte() == '\n';
        await stream.WriteAsync(Encoding.UTF8.GetBytes((isOnItsOwn ? "" : "\n") + RecordsJson.Text(head) + "\n"), ct);
        stream.Flush(flushToDisk: true);
    }

    private static KeptHead? Head(string line)
    {
        try
        {
            return RecordsJson.Value<KeptHead>(line) is { Hash.Length: 64 } head ? head : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
