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
        await Waits(database, next); // one at a time

        await PostgresDatabase.OnServer($"SELECT pg_terminate_backend({killed.ProcessID})");

        await next.WaitAsync(TimeSpan.FromMinutes(5), Ct);
    }

    /// <summary>Returns once a connection to this database waits for a lock; it would fail if the migration went through without.</summary>
    private static async Task Waits(PostgresDatabase database, Task migration)
    {
        await using var looking = new NpgsqlConnection(database.Options.ConnectionString + ";Pooling=False");
        await looking.OpenAsync(Ct);
        await using var look = new NpgsqlCommand("SELECT COUNT(*) FROM pg_stat_activity WHERE datname = current_database() AND wait_event_type = 'Lock'", looking);
        while ((long)(await look.ExecuteScalarAsync(Ct))! == 0)
        {
            Assert.False(migration.IsCompleted);
            await Task.Delay(20, Ct);
        }
    }
}
