using System.Text.Json;
using MeltShop.Records.Exchange;
using MeltShop.Records.Heats;
using MeltShop.Records.Keeping;
using MeltShop.Records.Reading;
using MeltShop.Records.Sites;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Writing;

/// <summary>The records as the trail says that they were written last, to compare with the tables.</summary>
internal sealed class WrittenRows
{
    /// <summary>What sums of the same doubles in another order may differ by: kilograms, and a share of all that was added and taken away.</summary>
    private const double SumTolerance = 1e-6, ShareTolerance = 1e-12;

    private static readonly string[] EntryColumns = [nameof(Entry.Operation), nameof(Entry.PersonId), nameof(Entry.EnteredAt), nameof(Entry.Result)];

    private readonly Dictionary<(string Table, string Key), WrittenRow> rows = [];

    public int Count => rows.Count;

    /// <summary>Takes in the next trail row: what it wrote, and the entry that it answers. False where its payload cannot be read.</summary>
    public bool Add(TrailRow row)
    {
        try
        {
            using var document = JsonDocument.Parse(row.Payload);
            rows[(nameof(RecordsContext.Entries), row.EntryKey.ToString())] = new(
                EntryColumns,
                [row.Operation, StoredValue.Text(row.PersonId), StoredValue.Text(row.EnteredAt.UtcDateTime), document.RootElement.GetProperty("result").GetRawText()]);
            foreach (var image in document.RootElement.GetProperty("rows").Deserialize<List<RowImage>>(RecordsJson.Options)!) Add(image);
            if (document.RootElement.TryGetProperty(BulkImages.Name, out var bulk)) AddBulk(bulk);
            return true;
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return false;
        }
    }

    /// <summary>Reads every table that the trail covers, as it is stored, and says what differs.</summary>
    public async Task<IReadOnlyList<TrailFault>> Compare(RecordsContext db, CancellationToken ct)
    {
        var faults = new List<TrailFault>();
        var seen = new HashSet<(string, string)>();
        foreach (var covered in CoveredTables.Of(db))
        {
            await foreach (var row in StoredRows.Read(db, covered.Table, ct))
            {
                var key = (covered.Table.Name, string.Join('/', covered.Table.KeyPlaces.Select(i => StoredValue.Text(row[i]))));
                seen.Add(key);
                faults.AddRange(Compare(covered, key, row));
            }
        }

        faults.AddRange(await Stocks(db, ct));
        faults.AddRange(await Metal(db, ct));
        faults.AddRange(rows.Keys.Where(k => !seen.Contains(k)).Select(k => new TrailFault("row.missing", Table: k.Table, Key: k.Key)));
        return faults;
    }

    /// <summary>A stock that was counted or received is the sum of its ledger, whose lines the trail holds; sums of doubles differ in their last digits.</summary>
    private static async Task<IEnumerable<TrailFault>> Stocks(RecordsContext db, CancellationToken ct)
    {
        var stocks = await db.Materials
            .Where(m => m.StockKg != null || db.StockFacts.Any(s => s.MaterialId == m.Id && (s.Kind == StockKind.Counted || s.Kind == StockKind.Received)))
            .Select(m => new
            {
                m.Id,
                m.StockKg,
                Sum = db.InForce<StockFact>().Where(s => s.MaterialId == m.Id).Sum(s => s.Kg),
                Moved = db.StockFacts.Where(s => s.MaterialId == m.Id).Sum(s => Math.Abs(s.Kg)),
            })
            .ToListAsync(ct);
        return stocks.Where(s => !IsSame(s.StockKg ?? double.NaN, s.Sum, s.Moved))
            .Select(s => new TrailFault("row.changed", Table: "Materials", Key: FormattableString.Invariant($"{s.Id}"), Column: nameof(Material.StockKg)));
    }

    /// <summary>So is the liquid in a furnace. All its lines count for what may differ, also those that a later one corrects: they were added once, and taken away again.</summary>
    private static async Task<IEnumerable<TrailFault>> Metal(RecordsContext db, CancellationToken ct)
    {
        var lines = db.InForce<FurnaceMetal>();
        var furnaces = await db.Furnaces
            .Select(f => new
            {
                f.Id,
                f.LiquidKg,
                Sum = lines.Where(m => m.FurnaceId == f.Id).Sum(m => m.Kg),
                Moved = db.FurnaceMetals.Where(m => m.FurnaceId == f.Id).Sum(m => Math.Abs(m.Kg)),
            })
            .ToListAsync(ct);
        return furnaces.Where(f => !IsSame(f.LiquidKg, f.Sum, f.Moved))
            .Select(f => new TrailFault("row.changed", Table: "Furnaces", Key: FormattableString.Invariant($"{f.Id}"), Column: nameof(Furnace.LiquidKg)));
    }

    // Where nothing ever moved there is nothing that could differ.
    private static bool IsSame(double kept, double sum, double moved) => Math.Abs(kept - sum) <= (moved > 0 ? SumTolerance + (ShareTolerance * moved) : 0);

    private void Add(RowImage image)
    {
        var key = (image.Table, image.Key);
        if (image.Columns is null)
        {
            rows.Remove(key);
            return;
        }

        if (rows.TryGetValue(key, out var row)) row.Take(image.Columns); // an owned part adds columns to its owner's row
        else rows[key] = new([.. image.Columns.Keys], [.. image.Columns.Values]);
    }

    private void AddBulk(JsonElement bulk)
    {
        foreach (var sheet in bulk.EnumerateArray())
        {
            var table = string.Intern(sheet.GetProperty("table").GetString()!);
            string[] names = [.. sheet.GetProperty("columns").EnumerateArray().Select(c => c.GetString()!)];
            foreach (var line in sheet.GetProperty("rows").EnumerateArray())
                rows[(table, line[0].GetString()!)] = new(names, [.. line.EnumerateArray().Skip(1).Select(t => t.GetString())]);
        }
    }

    private IEnumerable<TrailFault> Compare(CoveredTable covered, (string Table, string Key) key, object?[] row)
    {
        if (!rows.TryGetValue(key, out var written)) return [new("row.unknown", Table: key.Table, Key: key.Key)];
        return covered.Table.Columns.Zip(row)
            .Where(c => covered.Columns.TryGetValue(c.First.Name, out var column) && !Agrees(column, c.First.Kind, column.Text(c.Second), written))
            .Select(c => new TrailFault("row.changed", Table: key.Table, Key: key.Key, Column: c.First.Name));
    }

    /// <summary>
    /// A column that came after the row was written holds nothing; where it may not be empty, what its migration put there: no, nought or an empty text.
    /// SQLite keeps nought without a sign, which says nothing about a mass.
    /// </summary>
    private static bool Agrees(CoveredColumn column, ValueKind kind, string? stored, WrittenRow written)
    {
        if (!written.TryGetValue(column.Name, out var text)) return stored == (column.MayBeEmpty ? null : Untouched(kind));
        return stored == text || (kind is ValueKind.Number && stored is "0" or "-0" && text is "0" or "-0");
    }

    private static string? Untouched(ValueKind kind) => kind switch
    {
        ValueKind.Integer or ValueKind.Number => "0",
        ValueKind.YesNo => bool.FalseString,
        ValueKind.Text => "",
        ValueKind.Identifier => Guid.Empty.ToString(),
        _ => null,
    };
}
