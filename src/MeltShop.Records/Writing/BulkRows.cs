using System.Data.Common;
using System.Globalization;
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
        {
            // As one array: a row for each of a million would take its time.
            await using var command = await StoredRows.Command(
                db, $"""SELECT array_agg(nextval(pg_get_serial_sequence('"{table}"', 'Id'))) FROM generate_series(1, {count.ToString(CultureInfo.InvariantCulture)})""", ct);
            return await command.ExecuteScalarAsync(ct) as long[] ?? [];
        }

        await using var numbers = await StoredRows.Command(db, $"SELECT seq FROM sqlite_sequence WHERE name = '{table}'", ct); // its writer is alone
        var last = await numbers.ExecuteScalarAsync(ct) as long? ?? 0;
        return [.. Enumerable.Range(1, count).Select(n => last + n)];
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
            var stored = Stored(db, rows, columns, key, ct);
            if (db.Database.IsSqlite()) await StoredWriting.Add(db, table, stored.ToAsyncEnumerable(), ct);
            else await BinaryCopy.Write(db, table, [.. columns.Select(c => c.StoreType)], stored, ct);
        }
        catch (DbException fault)
        {
            ct.ThrowIfCancellationRequested(); // a copy that is cut complains of its half line
            throw new DbUpdateException($"Rows of {table.Name} were refused.", fault); // as the change tracker says it, so that the recorder knows what it is
        }

        db.Bulk.End();
    }

    private static IEnumerable<object?[]> Stored<TRow>(RecordsContext db, IEnumerable<TRow> rows, IReadOnlyList<BulkColumn> columns, int key, CancellationToken ct)
        where TRow : class
    {
        foreach (var row in rows)
        {
            ct.ThrowIfCancellationRequested();
            var values = new object?[columns.Count];
            for (var i = 0; i < values.Length; i++) values[i] = columns[i].Value(row);
            db.Bulk.Add(values, key);
            yield return values;
        }
    }
}
