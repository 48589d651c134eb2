using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Databases;

public abstract class MigrationTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public void Model_AgainstItsMigrations_HasNoPendingChanges()
    {
        using var db = database.Open();

        Assert.False(db.Database.HasPendingModelChanges(), "The entities have changed: add a migration for both databases.");
    }

    [Fact]
    public async Task Database_MigratedAgain_StaysAsItIs()
    {
        await Foundry.Found(database);
        await RecordsDatabase.MigrateAsync(database.Options, Ct);

        await using var db = database.Open();
        Assert.Empty(await db.Database.GetPendingMigrationsAsync(Ct));
        Assert.NotEmpty(await db.Materials.ToListAsync(Ct));
    }

    [Fact]
    public async Task Database_MigratedByFourAtOnce_IsMigratedOnce()
    {
        var options = await Empty();

        await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => RecordsDatabase.MigrateAsync(options, Ct), Ct)));

        await using var db = new Records.Databases.ContextFactory(options).CreateDbContext();
        Assert.Equal(0, (await db.TrailHeads.SingleAsync(Ct)).Number);
        Assert.Equal(db.Database.GetMigrations(), await db.Database.GetAppliedMigrationsAsync(Ct));
    }

    [Fact]
    public void Entity_OfTheRecords_HasATableAndAKey()
    {
        using var db = database.Open();
        var mapped = db.Model.GetEntityTypes().Select(t => t.ClrType).ToHashSet();
        var entities = typeof(RecordsContext).Assembly.GetTypes().Where(t => t is { IsClass: true, IsAbstract: false } && t.GetProperty("Id")?.PropertyType == typeof(long)
            && EntityFolders.Contains(t.Namespace));

        Assert.DoesNotContain(entities, t => !mapped.Contains(t));
        Assert.All(db.Model.GetEntityTypes(), t => Assert.NotNull(t.FindPrimaryKey()));
    }

    /// <summary>A connection to a database without a table.</summary>
    protected abstract Task<RecordsOptions> Empty();

    private static IEnumerable<string?> EntityFolders =>
        new[] { "Grades", "Heats", "Keeping", "Laboratory", "Ladles", "People", "Sites", "Yard" }.Select(f => $"MeltShop.Records.{f}");
}

public sealed class MigrationTestsOnSqlite(SqliteDatabase database) : MigrationTests(database), IClassFixture<SqliteDatabase>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Database_WithTheLockOfAKilledMigration_IsMigratedAllTheSame()
    {
        var options = await Empty();
        await RecordsDatabase.MigrateAsync(options, Ct);
        await using (var db = new Records.Databases.ContextFactory(options).CreateDbContext())
            Assert.Equal(1, await db.Send("""INSERT INTO "__EFMigrationsLock" ("Id", "Timestamp") VALUES (1, '2026-01-01 00:00:00')"""));

        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Ct);
        patience.CancelAfter(TimeSpan.FromMinutes(5)); // without the care taken it would wait for ever
        await RecordsDatabase.MigrateAsync(options, patience.Token);
    }

    [Fact]
    public async Task Connection_AnyOne_IsDurable()
    {
        for (var n = 0; n < 2; n++)
        {
            await using var db = database.Open();
            Assert.Equal("wal", await Pragma<string>(db, "journal_mode"));
            Assert.Equal(2, await Pragma<long>(db, "synchronous")); // FULL
            Assert.Equal(1, await Pragma<long>(db, "foreign_keys"));
            Assert.Equal(10_000, await Pragma<long>(db, "busy_timeout"));
        }
    }

    protected override Task<RecordsOptions> Empty() =>
        Task.FromResult(SqliteDatabase.OptionsFor(Path.Combine(Path.GetDirectoryName(database.File)!, $"{Guid.NewGuid():N}", "new.db")));

    private static async Task<T> Pragma<T>(RecordsContext db, string name)
    {
        await db.Database.OpenConnectionAsync(Ct);
        await using var command = db.Database.GetDbConnection().CreateCommand();
#pragma warning disable CA2100 // names from above
        command.CommandText = $"PRAGMA {name}";
#pragma warning restore CA2100
        return (T)(await command.ExecuteScalarAsync(Ct))!;
    }
}

public sealed class MigrationTestsOnPostgres(PostgresDatabase database) : MigrationTests(database), IClassFixture<PostgresDatabase>
{
    protected override async Task<RecordsOptions> Empty()
    {
        var name = $"empty_{Guid.NewGuid():N}";
        await PostgresDatabase.OnServer($"CREATE DATABASE {name}");
        return PostgresDatabase.OptionsFor(name);
    }
}
