using System.Text.Json;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace MeltShop.Records.Writing;

/// <summary>The records as the trail says that they were written last, to compare with the tables.</summary>
internal sealed class WrittenRows
{
    private const int Batch = 500;

    /// <summary>Kilograms.</summary>
    private const double StockTolerance = 1e-6;

    private readonly Dictionary<(string Table, string Key), Dictionary<string, string?>> rows = [];

    public int Count => rows.Count;

    /// <summary>Takes in the payload of the next trail row; false where it cannot be read.</summary>
    public bool Add(string payload)
    {
        try
        {
            using var document = JsonDocument.Parse(payload);
            foreach (var image in document.RootElement.GetProperty("rows").Deserialize<List<RowImage>>(RecordsJson.Options)!) Add(image);
            return true;
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return false;
        }
    }

    /// <summary>Reads every table that the trail covers and says what differs.</summary>
    public async Task<IReadOnlyList<TrailFault>> Compare(RecordsContext db, CancellationToken ct)
    {
        var faults = new List<TrailFault>();
        var seen = new HashSet<(string, string)>();
        foreach (var type in db.Model.GetEntityTypes().Where(t => !t.IsOwned() && RowImages.Covers(t.ClrType)))
        {
            try
            {
                await foreach (var image in Images(db, type, ct))
                {
                    seen.Add((image.Table, image.Key));
                    faults.AddRange(Compare(image));
                }
            }
            catch (Exception e) when (e is FormatException or ArgumentException or InvalidCastException or InvalidOperationException or OverflowException)
            {
                faults.Add(new("row.unreadable", Table: type.GetTableName()));
            }
        }

        faults.AddRange(await Stocks(db, ct));
        faults.AddRange(rows.Keys.Where(k => !seen.Contains(k)).Select(k => new TrailFault("row.missing", Table: k.Table, Key: k.Key)));
        return faults;
    }

    /// <summary>A stock is the sum of its ledger, whose lines the trail holds; sums of doubles differ in their last digits.</summary>
    private static async Task<IEnumerable<TrailFault>> Stocks(RecordsContext db, CancellationToken ct)
    {
        var stocks = await db.Materials.Where(m => m.StockKg != null)
            .Select(m => new { m.Id, m.StockKg, Sum = db.StockFacts.Where(s => s.MaterialId == m.Id).Sum(s => s.Kg) })
            .ToListAsync(ct);
        return stocks.Where(s => !(Math.Abs(s.StockKg!.Value - s.Sum) <= StockTolerance))
            .Select(s => new TrailFault("row.changed", Table: "Materials", Key: FormattableString.Invariant($"{s.Id}"), Column: nameof(Material.StockKg)));
    }

    private void Add(RowImage image)
    {
        var key = (image.Table, image.Key);
        if (image.Columns is null)
        {
            rows.Remove(key);
            return;
        }

        if (!rows.TryGetValue(key, out var columns)) rows[key] = columns = [];
        foreach (var (column, text) in image.Columns) columns[column] = text; // an owned part adds columns to its owner's row
    }

    private IEnumerable<TrailFault> Compare(RowImage image)
    {
        if (!rows.TryGetValue((image.Table, image.Key), out var written)) return [new("row.unknown", Table: image.Table, Key: image.Key)];
        return image.Columns!.Where(c => c.Value != written.GetValueOrDefault(c.Key))
            .Select(c => new TrailFault("row.changed", Table: image.Table, Key: image.Key, Column: c.Key));
    }

    private static async IAsyncEnumerable<RowImage> Images(
        RecordsContext db, IEntityType type, [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken ct)
    {
        var set = (IQueryable<object>)typeof(DbContext).GetMethod(nameof(DbContext.Set), [])!.MakeGenericMethod(type.ClrType).Invoke(db, null)!;
        var read = 0;
        await foreach (var _ in set.AsAsyncEnumerable().WithCancellation(ct))
        {
            if (++read % Batch != 0) continue;
            foreach (var row in db.ChangeTracker.Entries().ToList()) yield return RowImages.Of(row);
            db.ChangeTracker.Clear();
        }

        foreach (var row in db.ChangeTracker.Entries().ToList()) yield return RowImages.Of(row);
        db.ChangeTracker.Clear();
    }
}
