using System.Text.Json;
using MeltShop.Records.Keeping;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Changes;

/// <summary>What was changed since somebody saw a row, by whom and when: for the one whose entry came too late. It is read from the trail.</summary>
public sealed class ChangesSince(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Entries of the whole shop that are looked through: days of work, read in some milliseconds.</summary>
    private const int Most = 3000;

    /// <returns>The earliest first; nothing where the trail does not say, as for a form that lay open over all of those entries.</returns>
    public async Task<IReadOnlyList<ChangeMade>> Load(SeenRow seen, CancellationToken ct = default)
    {
        ArgumentNullException.ThrowIfNull(seen);
        await using var db = await contexts.CreateDbContextAsync(ct);
        var made = new List<ChangeMade>();
        foreach (var row in await Entries(db, seen).ToListAsync(ct))
        {
            var images = Images(row);
            var replaced = images.Where(i => (i.Table, i.Key) == (seen.Table, seen.Key)).Select(i => i.Was?.GetValueOrDefault(nameof(IVersioned.Version))).OfType<string>().ToList();
            if (replaced.Count == 0) continue;
            made.Insert(0, new(row.Operation, row.PersonName, row.EnteredAt, await new RowChanges(db, seen).Of(images, ct)));
            if (replaced.Contains(seen.Version.ToString())) return made;
        }

        return [];
    }

    /// <summary>Those that wrote the row, the latest first.</summary>
    private static IQueryable<TrailRow> Entries(RecordsContext db, SeenRow seen)
    {
        var mark = $"\"table\":{JsonSerializer.Serialize(seen.Table)},\"key\":{JsonSerializer.Serialize(seen.Key)}";
        return db.TrailRows.AsNoTracking().Where(r => r.Number > db.TrailRows.Max(last => last.Number) - Most && r.Payload.Contains(mark)).OrderByDescending(r => r.Number);
    }

    private static List<RowImage> Images(TrailRow row)
    {
        using var payload = JsonDocument.Parse(row.Payload);
        return payload.RootElement.GetProperty("rows").Deserialize<List<RowImage>>(RecordsJson.Options)!;
    }
}
