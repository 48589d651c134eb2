using System.Data.Common;
using System.Globalization;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace MeltShop.Records.Exchange;

/// <summary>Writes rows as they come, by the fastest way that each database has.</summary>
internal static class StoredWriting
{
    /// <summary>Signs that are sent at once.</summary>
    private const int Portion = 32 * 1024;

    /// <summary>Into an empty table of a database that nobody else uses: numbers that it gives go on after those that came with the rows.</summary>
    /// <returns>How many there were.</returns>
    public static async Task<long> Write(RecordsContext db, StoredTable table, IAsyncEnumerable<object?[]> rows, CancellationToken ct)
    {
        var written = await Add(db, table, rows, ct);
        if (!db.Database.IsSqlite()) await Continue(db, table, ct);
        return written;
    }

    /// <summary>To a table as it stands; the keys are free.</summary>
    /// <returns>How many there were.</returns>
    public static Task<long> Add(RecordsContext db, StoredTable table, IAsyncEnumerable<object?[]> rows, CancellationToken ct) =>
        db.Database.IsSqlite() ? Insert(db, table, rows, ct) : CopyIn(db, table, rows, ct);

    private static async Task<long> Insert(RecordsContext db, StoredTable table, IAsyncEnumerable<object?[]> rows, CancellationToken ct)
    {
        var places = string.Join(", ", table.Columns.Select((_, i) => $"$p{i}"));
        await using var command = await StoredRows.Command(db, $"INSERT INTO \"{table.Name}\" ({table.Selection}) VALUES ({places})", ct);
        for (var i = 0; i < table.Columns.Count; i++)
        {
            var parameter = command.CreateParameter();
            parameter.ParameterName = $"$p{i}";
            command.Parameters.Add(parameter);
        }

        var parameters = command.Parameters.Cast<DbParameter>().ToArray();
        var written = 0L;
        await foreach (var row in rows.WithCancellation(ct))
        {
            for (var i = 0; i < row.Length; i++) parameters[i].Value = StoredValue.ForSqlite(row[i]);
            command.ExecuteNonQuery(); // SQLite waits for nothing: a task for each of a million rows would
            written++;
        }

        return written;
    }

    /// <summary>As text: the server reads each value as the column's own type, also where the table is one of an earlier version.</summary>
    private static async Task<long> CopyIn(RecordsContext db, StoredTable table, IAsyncEnumerable<object?[]> rows, CancellationToken ct)
    {
        await db.Database.OpenConnectionAsync(ct);
        var written = 0L;
        await using (var text = await ((NpgsqlConnection)db.Database.GetDbConnection())
            .BeginTextImportAsync($"COPY \"{table.Name}\" ({table.Selection}) FROM STDIN", ct))
        {
            var lines = new StringBuilder();
            await foreach (var row in rows.WithCancellation(ct))
            {
                for (var i = 0; i < row.Length; i++) lines.Append(i == 0 ? "" : "\t").Append(Field(row[i]));
                lines.Append('\n');
                written++;
                if (lines.Length < Portion) continue;
                await text.WriteAsync(lines, ct);
                lines.Clear();
            }

            await text.WriteAsync(lines, ct);
        }

        return written;
    }

    /// <summary>Numbers that the database gives go on after those that came with the rows.</summary>
    private static async Task Continue(RecordsContext db, StoredTable table, CancellationToken ct)
    {
        if (table.Key is not [var key] || table.Columns.Single(c => c.Name == key).Kind != ValueKind.Integer) return;
        await using var command = await StoredRows.Command(
            db,
            $"""SELECT setval(s, m) FROM (SELECT pg_get_serial_sequence('"{table.Name}"', '{key}') AS s, MAX("{key}") AS m FROM "{table.Name}") AS last WHERE s IS NOT NULL AND m > 0""",
            ct);
        await command.ExecuteNonQueryAsync(ct);
    }

    /// <summary>PostgreSQL's text format for COPY.</summary>
    private static string Field(object? value) => value switch
    {
        null => "\\N",
        bool yes => yes ? "t" : "f",
        byte[] bytes => $"\\\\x{Convert.ToHexString(bytes)}",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        StoredValue.Unreadable => throw new InvalidDataException("A value is of another type than its column: the check of the trail says which."),
        _ => Escaped(StoredValue.Text(value)!),
    };

    private static string Escaped(string text) => text.AsSpan().IndexOfAny("\\\t\n\r") < 0 ? text
        : text
            .Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\t", "\\t", StringComparison.Ordinal)
            .Replace("\n", "\\n", StringComparison.Ordinal).Replace("\r", "\\r", StringComparison.Ordinal);
}
