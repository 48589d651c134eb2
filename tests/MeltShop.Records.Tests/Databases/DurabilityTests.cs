using MeltShop.Records.Databases;
using Npgsql;

namespace MeltShop.Records.Tests.Databases;

/// <summary>Whether an acknowledged entry survives a power cut is a setting of the server, read back from it as it runs.</summary>
public sealed class DurabilityTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Postgres_AsItComes_IsDurable()
    {
        await using var server = await OwnPostgres.Make();
        await RecordsDatabase.MigrateAsync(server.Options, Ct);
        await using var db = new ContextFactory(server.Options).CreateDbContext();

        Assert.Empty(await Durability.Weaknesses(db, Ct));
    }

    [Fact]
    public async Task Postgres_WithCommitsThatDoNotWait_IsFoundOut()
    {
        await using var server = await OwnPostgres.Make();
        await RecordsDatabase.MigrateAsync(server.Options, Ct);
        var hasty = server.Options with { ConnectionString = server.Options.ConnectionString + ";Options=-c synchronous_commit=off" };
        await using var db = new ContextFactory(hasty).CreateDbContext();

        Assert.Equal(["synchronous_commit=off"], await Durability.Weaknesses(db, Ct));
    }

    [Fact]
    public async Task Sqlite_AsTheProgramOpensIt_IsDurableAndAnythingLessIsFoundOut()
    {
        await using var database = new SqliteDatabase();
        await database.InitializeAsync();
        await using var db = database.Open();
        Assert.Empty(await Durability.Weaknesses(db, Ct));

        await db.Send("PRAGMA synchronous=NORMAL");
        Assert.Equal(["synchronous=1"], await Durability.Weaknesses(db, Ct));
    }

    [Fact]
    public async Task Migration_WhoseProgramWasKilled_DoesNotHoldUpTheNextStart()
    {
        await using var database = new PostgresDatabase();
        await database.InitializeAsync();
        await using var killed = new NpgsqlConnection(database.Options.ConnectionString + ";Pooling=False");
        await killed.OpenAsync(Ct);
        await using (var hold = new NpgsqlCommand("SELECT pg_advisory_lock(hashtext('MeltShop migration'))", killed)) await hold.ExecuteNonQueryAsync(Ct);
        var next = RecordsDatabase.MigrateAsync(database.Options, Ct);
        await Task.Delay(300, Ct);
        Assert.False(next.IsCompleted); // one at a time

        await PostgresDatabase.OnServer($"SELECT pg_terminate_backend({killed.ProcessID})");

        await next.WaitAsync(TimeSpan.FromSeconds(60), Ct);
    }
}
