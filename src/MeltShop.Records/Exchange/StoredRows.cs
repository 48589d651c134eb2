using System.Data.Common;
using System.Runtime.CompilerServices;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace MeltShop.Records.Exchange;

/// <summary>Reads the bytes of a table as they are stored, past all that would mend them on the way.</summary>
internal static class StoredRows
{
    /// <summary>Every row, in the order of its key; each has a value for each column of <paramref name="table"/>.</summary>
    public static async IAsyncEnumerable<object?[]> Read(RecordsContext db, StoredTable table, [EnumeratorCancellation] CancellationToken ct)
    {
        await using var command = await Command(db, $"SELECT {table.Selection} FROM \"{table.Name}\" ORDER BY {table.Order}", ct);
        await using var reader = await command.ExecuteReaderAsync(ct);
        var isSqlite = db.Database.IsSqlite();
        while (await reader.ReadAsync(ct))
        {
            var row = new object?[table.Columns.Count];
            for (var i = 0; i < row.Length; i++)
                row[i] = isSqlite ? StoredValue.OfSqlite(table.Columns[i].Kind, reader.GetValue(i)) : StoredValue.OfPostgres(reader.GetValue(i));
            yield return row;
        }
    }

    public static async Task<long> Count(RecordsContext db, string table, CancellationToken ct)
    {
        await using var command = await Command(db, $"SELECT COUNT(*) FROM \"{table}\"", ct);
        return (long)(await command.ExecuteScalarAsync(ct))!;
    }

    /// <summary>A command of the context's connection, in its transaction.</summary>
    public static async Task<DbCommand> Command(RecordsContext db, string statement, CancellationToken ct)
    {
        await db.Database.OpenConnectionAsync(ct);
        var command = db.Database.GetDbConnection().CreateCommand();
        command.Transaction = db.Database.CurrentTransaction?.GetDbTransaction();
#pragma warning disable CA2100 // names of the model
        command.CommandText = statement;
#pragma warning restore CA2100
        return command;
    }
}
