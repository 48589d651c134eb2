using MeltShop.Records;
using MeltShop.Records.Backups;
using MeltShop.Web.Tests.Running;
using Npgsql;

namespace MeltShop.Web.Tests.Commands;

/// <summary>An installation with PostgreSQL as deploy/ sets it up: an owner who migrates, and a role of the app that owns nothing.</summary>
public sealed class PostgresTests : IAsyncLifetime
{
    private readonly string database = $"web_{Guid.NewGuid():N}";
    private readonly string folder = Directory.CreateTempSubdirectory("meltshop-postgres-").FullName;

    private string Role => $"{database}_app";

    private static string Server => Environment.GetEnvironmentVariable("MELTSHOP_TEST_POSTGRES") is { Length: > 0 } connection
        ? connection
        : throw new InvalidOperationException("MELTSHOP_TEST_POSTGRES holds no connection string of a PostgreSQL server. tests/run starts one.");

    [Fact]
    public async Task Database_MigratedByItsOwner_ServesTheAppsOwnRole()
    {
        var early = await AsApp("api-key", "add", "scale");
        var migrated = await Shell.RunAsync(
            ["migrate"], ("ASPNETCORE_ENVIRONMENT", "Production"), ("MeltShop__DataFolder", folder), ("MeltShop__Database", "postgres"),
            ("MeltShop__OwnerConnection", Connection(null)));
        var added = await AsApp("api-key", "add", "scale");
        var listed = await AsApp("api-key", "list");

        Assert.Equal(1, early.ExitCode);
        Assert.Contains("migrate", early.Error, StringComparison.Ordinal);
        Assert.True(migrated.ExitCode == 0, migrated.Error);
        Assert.True(added.ExitCode == 0, added.Error);
        Assert.StartsWith("ms_", added.LastLine, StringComparison.Ordinal);
        Assert.Contains("scale", listed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Backup_MadeWhileKeysAreAdded_IsRestoredIntoAnEmptyDatabaseAndPassesThroughItsHead()
    {
        await RecordsDatabase.MigrateAsync(new() { Provider = RecordsProvider.Postgres, ConnectionString = Connection(Role), OwnerConnection = Connection(null) }, TestContext.Current.CancellationToken);
        Assert.Equal(0, (await AsApp("api-key", "add", "scale")).ExitCode);
        var file = Path.Combine(folder, "monday");
        var other = $"{database}_restored";
        await OnAsync(Server, $"CREATE DATABASE {other}");
        try
        {
            var adding = AsApp("api-key", "add", "spectrometer");
            var written = await AsApp("backup", file);
            Assert.True((await adding).ExitCode == 0, (await adding).Error);
            var restored = await AsOwner(other, "restore", file);
            var verified = await AsOwner(other, "verify", "--against", BackupHead.FileOf(file));
            var listed = await AsOwner(other, "api-key", "list");

            Assert.True(written.ExitCode == 0, written.Error);
            Assert.True(restored.ExitCode == 0, restored.Error);
            Assert.True(verified.ExitCode == 0, verified.Error);
            Assert.Equal((written.LastLine, written.LastLine), (restored.LastLine, verified.LastLine));
            Assert.Contains("scale", listed.Output, StringComparison.Ordinal);
            Assert.Equal(1, (await AsOwner(other, "restore", file)).ExitCode);
        }
        finally
        {
            await OnAsync(Server, $"DROP DATABASE {other} WITH (FORCE)");
        }
    }

    [Fact]
    public async Task Shop_MovedFromItsFile_IsThereWithItsTrailAndIsNotMovedTwice()
    {
        var file = Path.Combine(folder, "meltshop.db");
        await File.WriteAllBytesAsync(file, await EmptyRecords.Bytes, TestContext.Current.CancellationToken);
        var added = await Shell.RunAsync(folder, "api-key", "add", "scale");
        var before = await Shell.RunAsync(folder, "verify");
        Assert.True(added.ExitCode == 0, added.Error);
        Assert.True(before.ExitCode == 0, before.Error);

        var moved = await AsOwner(database, "move", file);
        var verified = await AsOwner(database, "verify", "--against", before.LastLine);
        var listed = await AsApp("api-key", "list");
        var again = await AsOwner(database, "move", file);

        Assert.True(moved.ExitCode == 0, moved.Error);
        Assert.True(verified.ExitCode == 0, verified.Error);
        Assert.Equal((before.LastLine, before.LastLine), (moved.LastLine, verified.LastLine));
        Assert.Contains("scale", listed.Output, StringComparison.Ordinal);
        Assert.Equal(1, again.ExitCode);
        Assert.Equal(before.LastLine, (await AsOwner(database, "verify")).LastLine);
    }

    [Fact]
    public async Task Role_OfTheApp_CannotMigrate()
    {
        var run = await AsApp("migrate");

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("permission denied", run.Error, StringComparison.Ordinal);
    }

    public async ValueTask InitializeAsync()
    {
        await OnAsync(Server, $"CREATE DATABASE {database}");
        // As deploy/database-roles.sh does.
        await OnAsync(Connection(null), $"""
            create role {Role} login nosuperuser nocreatedb nocreaterole;
            revoke create on schema public from public;
            grant usage on schema public to {Role};
            alter default privileges in schema public grant select, insert, update, delete on tables to {Role};
            alter default privileges in schema public grant usage, select on sequences to {Role};
            """);
    }

    public async ValueTask DisposeAsync()
    {
        await OnAsync(Server, $"DROP DATABASE {database} WITH (FORCE)");
        await OnAsync(Server, $"DROP ROLE {Role}");
        Directory.Delete(folder, recursive: true);
    }

    private Task<Shell> AsApp(params string[] words) => Shell.RunAsync(
        words, ("ASPNETCORE_ENVIRONMENT", "Production"), ("MeltShop__DataFolder", folder), ("MeltShop__Database", "postgres"),
        ("ConnectionStrings__MeltShop", Connection(Role)));

    private Task<Shell> AsOwner(string name, params string[] words) => Shell.RunAsync(
        words, ("ASPNETCORE_ENVIRONMENT", "Production"), ("MeltShop__DataFolder", folder), ("MeltShop__Database", "postgres"),
        ("MeltShop__OwnerConnection", new NpgsqlConnectionStringBuilder(Connection(null)) { Database = name }.ConnectionString));

    private string Connection(string? role)
    {
        var connection = new NpgsqlConnectionStringBuilder(Server) { Database = database, Pooling = false };
        if (role is not null) connection.Username = role;
        return connection.ConnectionString;
    }

    private static async Task OnAsync(string connectionString, string statements)
    {
        await using var connection = new NpgsqlConnection(new NpgsqlConnectionStringBuilder(connectionString) { Pooling = false }.ConnectionString);
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(statements, connection);
        await command.ExecuteNonQueryAsync();
    }
}
