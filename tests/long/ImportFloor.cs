using System.Diagnostics;
using MeltShop.Records;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace MeltShop.Long;

/// <summary>The bare bulk insert of the rows that an import wrote, into a copy of the database as it was before.</summary>
internal static class ImportFloor
{
    /// <summary>What the rows refer to; it is there before the clock starts, so that references are looked at here as there.</summary>
    private static readonly string[] Before = ["Entries", "ImportedFiles"];

    private static readonly string[] Tables = ["Samples", "Burns", "Readings", "SampleMeans", "ImportedSamples"];

    public static RecordsOptions Options(string file) => new() { Provider = RecordsProvider.Sqlite, ConnectionString = $"Data Source={file}" };

    /// <param name="measure">Imports, and asks then for the floor.</param>
    public static async Task<bool> Sqlite(Func<ImportShop, Func<Task<Func<Task<double>>>>, Task<bool>> measure)
    {
        var folder = Directory.CreateTempSubdirectory("meltshop-import-");
        var (file, copy) = (Path.Combine(folder.FullName, "shop.db"), Path.Combine(folder.FullName, "copy.db"));
        try
        {
            await using var shop = await ImportShop.Open(Options(file));
            await using (var from = new SqliteConnection($"Data Source={file}"))
            {
                await from.OpenAsync();
                await using var to = new SqliteConnection($"Data Source={copy};Pooling=False");
                await to.OpenAsync();
                from.BackupDatabase(to);
            }

            return await measure(shop, () => Task.FromResult(() => Inserted(file, copy)));
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            folder.Delete(recursive: true);
        }
    }

    public static async Task<bool> Postgres(Func<ImportShop, Func<Task<Func<Task<double>>>>, Task<bool>> measure)
    {
        var server = Environment.GetEnvironmentVariable("MELTSHOP_TEST_POSTGRES") ?? throw new InvalidOperationException("MELTSHOP_TEST_POSTGRES is not set.");
        var (name, copy) = ($"import_{Guid.NewGuid():N}", $"import_{Guid.NewGuid():N}");
        await Send(server, $"CREATE DATABASE {name}");
        try
        {
            await using var shop = await ImportShop.Open(new() { Provider = RecordsProvider.Postgres, ConnectionString = $"{server};Database={name};Command Timeout=0" });
            NpgsqlConnection.ClearAllPools();
            await Send(server, $"CREATE DATABASE {copy} TEMPLATE {name}");
            return await measure(shop, () => Task.FromResult(() => Copied($"{server};Database={name}", $"{server};Database={copy}")));
        }
        finally
        {
            NpgsqlConnection.ClearAllPools();
            await Send(server, $"DROP DATABASE IF EXISTS {name} WITH (FORCE)");
            await Send(server, $"DROP DATABASE IF EXISTS {copy} WITH (FORCE)");
        }
    }

    /// <summary>Prepared statements in one transaction. The triggers on facts act on changes alone, so they stand here as there.</summary>
    private static async Task<double> Inserted(string file, string copy)
    {
        await using var from = new SqliteConnection($"Data Source={file}");
        await from.OpenAsync();
        var rows = Tables.Select(table => Rows(from, table)).ToList();
        await using var to = new SqliteConnection($"Data Source={copy};Pooling=False;Foreign Keys=True");
        await to.OpenAsync();
        using (var before = to.BeginTransaction())
        {
            foreach (var table in Before) Put(to, before, table, Rows(from, table), "INSERT OR IGNORE");
            before.Commit();
        }

        var started = Stopwatch.GetTimestamp();
        await using var transaction = to.BeginTransaction();
        foreach (var (table, values) in Tables.Zip(rows)) Put(to, transaction, table, values, "INSERT");
        transaction.Commit();
        return Stopwatch.GetElapsedTime(started).TotalSeconds;
    }

    private static void Put(SqliteConnection to, SqliteTransaction transaction, string table, List<object[]> rows, string insertion)
    {
        using var insert = to.CreateCommand();
        insert.Transaction = transaction;
#pragma warning disable CA2100 // names of our own
        insert.CommandText = $"{insertion} INTO \"{table}\" VALUES ({string.Join(", ", rows[0].Select((_, i) => $"$p{i}"))})";
#pragma warning restore CA2100
        foreach (var i in Enumerable.Range(0, rows[0].Length)) insert.Parameters.Add(new SqliteParameter($"$p{i}", null));
        foreach (var row in rows)
        {
            for (var i = 0; i < row.Length; i++) insert.Parameters[i].Value = row[i];
            insert.ExecuteNonQuery();
        }
    }

    private static List<object[]> Rows(SqliteConnection from, string table)
    {
        using var select = from.CreateCommand();
#pragma warning disable CA2100 // names of our own
        select.CommandText = $"SELECT * FROM \"{table}\"";
#pragma warning restore CA2100
        using var reader = select.ExecuteReader();
        var rows = new List<object[]>();
        while (reader.Read())
        {
            var row = new object[reader.FieldCount];
            reader.GetValues(row);
            rows.Add(row);
        }

        return rows;
    }

    /// <summary>Binary COPY, table by table, in one transaction.</summary>
    private static async Task<double> Copied(string from, string to)
    {
        var contents = new List<byte[]>();
        await using (var source = new NpgsqlConnection(from))
        {
            await source.OpenAsync();
            foreach (var table in Before.Concat(Tables))
            {
                var rows = table == "Entries" ? "(SELECT * FROM \"Entries\" WHERE \"Operation\" = 'ImportSamples')" : $"\"{table}\"";
                await using var stream = await source.BeginRawBinaryCopyAsync($"COPY {rows} TO STDOUT (FORMAT BINARY)");
                using var content = new MemoryStream();
                await stream.CopyToAsync(content);
                contents.Add(content.ToArray());
            }
        }

        await using var target = new NpgsqlConnection(to + ";Command Timeout=0");
        await target.OpenAsync();
        foreach (var (table, content) in Before.Zip(contents)) await Put(target, table, content);
        var started = Stopwatch.GetTimestamp();
        await using var transaction = await target.BeginTransactionAsync();
        foreach (var (table, content) in Tables.Zip(contents.Skip(Before.Length))) await Put(target, table, content);

        await transaction.CommitAsync();
        return Stopwatch.GetElapsedTime(started).TotalSeconds;
    }

    private static async Task Put(NpgsqlConnection target, string table, byte[] content)
    {
        await using var stream = await target.BeginRawBinaryCopyAsync($"COPY \"{table}\" FROM STDIN (FORMAT BINARY)");
        await stream.WriteAsync(content);
    }

    private static async Task Send(string server, string statement)
    {
        await using var connection = new NpgsqlConnection(server);
        await connection.OpenAsync();
#pragma warning disable CA2100 // names of our own
        await using var command = new NpgsqlCommand(statement, connection);
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync();
    }
}
