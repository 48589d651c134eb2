using Npgsql;

namespace MeltShop.Records.Tests.Databases;

public sealed class PostgresDatabase : Database
{
    private static readonly Lazy<Task<string>> Migrated = new(Migrate);
    private static readonly SemaphoreSlim OneCopyAtATime = new(1);
    private const int Attempts = 60;

    private readonly string name = $"records_{Guid.NewGuid():N}";
    private readonly Func<Task<string>> template;

    public PostgresDatabase()
        : this(() => Migrated.Value)
    {
    }

    private PostgresDatabase(Func<Task<string>> template) => this.template = template;

    private static string Server =>
        Environment.GetEnvironmentVariable("MELTSHOP_TEST_POSTGRES") is { Length: > 0 } connection
            ? new NpgsqlConnectionStringBuilder(connection) { Timeout = 300, CommandTimeout = 600 }.ConnectionString // a busy machine is not at fault
            : throw new InvalidOperationException(
                "MELTSHOP_TEST_POSTGRES holds no connection string of a PostgreSQL server where databases may be created. tests/run starts one.");

    protected override async Task<RecordsOptions> Create()
    {
        var from = await template();
        await OneCopyAtATime.WaitAsync();
        try
        {
            await OnServer($"CREATE DATABASE {name} TEMPLATE {from}");
        }
        finally
        {
            OneCopyAtATime.Release();
        }

        return OptionsFor(name);
    }

    public override async Task<Func<Database>> Seal()
    {
        await Close();
        return () => new PostgresDatabase(() => Task.FromResult(name));
    }

    protected override async Task Drop()
    {
        await Close();
        await OnServer($"DROP DATABASE {name} WITH (FORCE)");
    }

    private async Task Close()
    {
        await using var connection = new NpgsqlConnection(Options.ConnectionString);
        NpgsqlConnection.ClearPool(connection);
    }

    public static RecordsOptions OptionsFor(string database) => new()
    {
        Provider = RecordsProvider.Postgres,
        ConnectionString = new NpgsqlConnectionStringBuilder(Server) { Database = database }.ConnectionString,
    };

    public static async Task OnServer(string statement)
    {
        await using var connection = new NpgsqlConnection(new NpgsqlConnectionStringBuilder(Server) { Pooling = false }.ConnectionString);
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(statement, connection);
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                await command.ExecuteNonQueryAsync();
                return;
            }
            catch (PostgresException taken) when (taken.SqlState == PostgresErrorCodes.ObjectInUse && attempt < Attempts)
            {
                // Of a connection that was closed the server's end goes a little later; the server waits five seconds for it, a busy machine may need more.
            }
        }
    }

    private static async Task<string> Migrate()
    {
        var template = $"template_{Guid.NewGuid():N}";
        await OnServer($"CREATE DATABASE {template}");
        var options = OptionsFor(template);
        await RecordsDatabase.MigrateAsync(options with { ConnectionString = options.ConnectionString + ";Pooling=False" });
        return template;
    }
}
