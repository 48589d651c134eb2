using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace MeltShop.Records.Exchange;

/// <summary>PostgreSQL's binary COPY: for tables that are those of the model, column by column, to their types.</summary>
internal static class BinaryCopy
{
    /// <param name="types">The database's type of each column.</param>
    public static async Task Write(RecordsContext db, StoredTable table, string[] types, IEnumerable<object?[]> rows, CancellationToken ct)
    {
        await db.Database.OpenConnectionAsync(ct);
        await using var copy = await ((NpgsqlConnection)db.Database.GetDbConnection())
            .BeginBinaryImportAsync($"COPY \"{table.Name}\" ({table.Selection}) FROM STDIN (FORMAT BINARY)", ct);
        foreach (var row in rows)
        {
            copy.StartRow(); // it waits for the wire alone: a task for each of a million values would take its time
            for (var i = 0; i < row.Length; i++) Write(copy, row[i], types[i]);
        }

        await copy.CompleteAsync(ct);
    }

    /// <summary>By the value's own type, which the writer remembers for each column.</summary>
    private static void Write(NpgsqlBinaryImporter copy, object? value, string type)
    {
        switch (value)
        {
            case null: copy.WriteNull(); break;
            case long number: copy.Write(number, type); break;
            case double number: copy.Write(number, type); break;
            case string text: copy.Write(text, type); break;
            case bool yes: copy.Write(yes, type); break;
            case DateTime instant: copy.Write(instant, type); break;
            case Guid key: copy.Write(key, type); break;
            default: copy.Write((byte[])value, type); break;
        }
    }
}
