using System.Data.Common;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace MeltShop.Browser.Tests.Running;

/// <summary>Where a running program keeps its records, and a way to them past it.</summary>
internal sealed class ShopDatabase : IAsyncDisposable
{
    private readonly Func<DbConnection> connect;
    private readonly string? name;

    private ShopDatabase(Func<DbConnection> connect, string? name, params (string Name, string Value)[] settings)
    {
        this.connect = connect;
        this.name = name;
        Settings = settings;
    }

    /// <summary>What the program has to be told.</summary>
    public (string Name, string Value)[] Settings { get; }

    private static string Server =>
        Environment.GetEnvironmentVariable("MELTSHOP_TEST_POSTGRES") ?? throw new InvalidOperationException("MELTSHOP_TEST_POSTGRES is not set; tests/run starts a server.");

    /// <summary>The embedded one, in the program's own data folder.</summary>
    public static ShopDatabase Sqlite(RunningApp app) =>
        new(() => new SqliteConnection($"Data Source={app.Database};Mode=ReadOnly;Pooling=False"), null);

    /// <summary>An empty database on the server of the tests.</summary>
    public static async Task<ShopDatabase> PostgresAsync()
    {
        var name = $"browser_{Guid.NewGuid():N}";
        await OnServerAsync($"CREATE DATABASE {name}");
        // A page that waits for its records does so for as long as it is looked at: of itself it gives up later than any machine is slow.
        var connection = new NpgsqlConnectionStringBuilder(Server) { Database = name, CommandTimeout = 600 }.ConnectionString;
        return new(
            () => new NpgsqlConnection(new NpgsqlConnectionStringBuilder(connection) { Pooling = false }.ConnectionString), name,
            ("MeltShop__Database", "postgres"), ("ConnectionStrings__MeltShop", connection));
    }

    /// <summary>The first column of each row.</summary>
    public async Task<List<T>> ReadAsync<T>(string question)
    {
        await using var connection = connect();
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the questions are the tests' own
        command.CommandText = question;
#pragma warning restore CA2100
        await using var reader = await command.ExecuteReaderAsync();
        var rows = new List<T>();
        while (await reader.ReadAsync()) rows.Add(reader.GetFieldValue<T>(0));
        return rows;
    }

    /// <summary>Does something to the records behind the program's back.</summary>
    public async Task WriteAsync(string statements)
    {
        await using var connection = connect();
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the statements are the tests' own
        command.CommandText = statements;
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync();
    }

    /// <summary>Keeps the program waiting for these tables until what is answered is disposed of. PostgreSQL only.</summary>
    public async Task<HeldTables> HoldAsync(IEnumerable<string> tables)
    {
        var connection = connect();
        await connection.OpenAsync();
        return await HeldTables.TakeAsync(connection, tables);
    }

    public async ValueTask DisposeAsync()
    {
        if (name is not null) await OnServerAsync($"DROP DATABASE {name} WITH (FORCE)");
    }

    private static async Task OnServerAsync(string statement)
    {
        await using var connection = new NpgsqlConnection(new NpgsqlConnectionStringBuilder(Server) { Pooling = false }.ConnectionString);
        await connection.OpenAsync();
#pragma warning disable CA2100 // the name is made here
        await using var command = new NpgsqlCommand(statement, connection);
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync();
    }
}
