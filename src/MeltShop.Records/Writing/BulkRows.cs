using System.Data.Common;
using System.Globalization;
using System.Runtime.CompilerServices;
using MeltShop.Records.Exchange;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Writing;

/// <summary>
/// Writes many rows at once, within <see cref="Recorder"/>: the database's own fast way, and the trail holds each of them all the same.
/// </summary>
public static class BulkRows
{
    /// <summary>So many keys that no other row has or will get, so that rows can name each other before they are written.</summary>
    public static async Task<IReadOnlyList<long>> FreeIds<TRow>(this RecordsContext db, int count, CancellationToken ct)
        where TRow : class
    {
        ArgumentNullException.ThrowIfNull(db);
        if (db.Database.CurrentTransaction is null) throw new InvalidOperationException("Keys are given in the transaction that writes the rows.");
        var table = db.Model.FindEntityType(typeof(TRow))!.GetTableName()!;
        if (!db.Database.IsSqlite())
            return await Longs(db, $"""SELECT nextval(pg_get_serial_sequence('"{table}"', 'Id')) FROM generate_series(1, {count.ToString(CultureInfo.InvariantCulture)})""", ct);
        var last = await Longs(db, $"SELECT seq FROM sqlite_sequence WHERE name = '{table}'", ct); // its writer is alone
        return [.. Enumerable.Range(1, count).Select(n => last.SingleOrDefault() + n)];
    }

    /// <summary>Writes the rows with the keys that they have. What the change tracker holds is saved before: the rows may refer to it.</summary>
    public static async Task InsertAll<TRow>(this RecordsContext db, IReadOnlyCollection<TRow> rows, CancellationToken ct)
        where TRow : class
    {
        ArgumentNullException.ThrowIfNull(db);
        ArgumentNullException.ThrowIfNull(rows);
        await db.SaveChangesAsync(ct);
        if (rows.Count == 0) return;
        var type = db.Model.FindEntityType(typeof(TRow))!;
        var table = StoredTables.Of(db).Single(t => t.Name == type.GetTableName());
        var columns = BulkColumn.Of(type, table);
        var key = table.KeyPlaces.Single();
        db.Bulk.Begin(table.Name, columns.Where((_, i) => i != key).Select(c => c.Name));
        try
        {
            await StoredWriting.Add(db, table, Stored(db, rows, columns, key, ct), ct);
        }
        catch (DbException fault)
        {
            ct.ThrowIfCancellationRequested(); // a copy that is cut complains of its half line
            throw new DbUpdateException($"Rows of {table.Name} were refused.", fault); // as the change tracker says it, so that the recorder knows what it is
        }

        db.Bulk.End();
    }

    private static async IAsyncEnumerable<object?[]> Stored<TRow>(
        RecordsContext db, IEnumerable<TRow> rows, IReadOnlyList<BulkColumn> columns, int key, [EnumeratorCancellation] CancellationToken ct)
        where TRow : class
    {
        var texts = new string?[columns.Count];
        foreach (var row in rows)
        {
            ct.ThrowIfCancellationRequested();
            var values = new object?[columns.Count];
            var next = 1;
            for (var i = 0; i < values.Length; i++)
            {
                values[i] = columns[i].Value(row);
                texts[i == key ? 0 : next++] = StoredValue.Text(values[i]);
            }

            db.Bulk.Add(texts);
            yield return values;
        }

        await Task.CompletedTask;
    }

    private static async Task<List<long>> Longs(RecordsContext db, string statement, CancellationToken ct)
    {
        await using var command = await StoredRows.Command(db, statement, ct);
        await using var reader = await command.ExecuteReaderAsync(ct);
        var numbers = new List<long>();
        while (await reader.ReadAsync(ct)) numbers.Add(reader.GetInt64(0));
        return numbers;
    }
}
