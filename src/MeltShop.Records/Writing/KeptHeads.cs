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
        if (File.Exists(file) && await Read(file, ct) is [.., var last] && last.At.UtcDateTime.Date == now.UtcDateTime.Date) return null;
        await using var db = await contexts.CreateDbContextAsync(ct);
        var head = await db.TrailHeads.AsNoTracking().SingleAsync(ct);
        if (head.Number == 0) return null;
        var kept = new KeptHead(now, head.Number, head.Hash);
        await File.AppendAllTextAsync(file, RecordsJson.Text(kept) + "\n", ct);
        return kept;
    }

    /// <summary>The heads in a file of this class, or in one beside a backup.</summary>
    /// <exception cref="InvalidDataException">A line is none; the message says which.</exception>
    public static async Task<IReadOnlyList<KeptHead>> Read(string file, CancellationToken ct = default)
    {
        var heads = new List<KeptHead>();
        foreach (var (number, line) in (await File.ReadAllLinesAsync(file, ct)).Index().Where(l => l.Item.Length > 0)) heads.Add(Head(file, number, line));
        return heads;
    }

    private static KeptHead Head(string file, int number, string line)
    {
        try
        {
            if (RecordsJson.Value<KeptHead>(line) is { Hash.Length: 64 } head) return head;
        }
        catch (JsonException)
        {
            // said below
        }

        throw new InvalidDataException($"{file}, line {number + 1}: not the end of a trail.");
    }
}
