using MeltShop.Records.Databases;
using MeltShop.Records.Heats;
using MeltShop.Records.Mapping;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace MeltShop.Records.Tests.Databases;

/// <summary>A second, real role beside the owner: what serves pages cannot rewrite what happened. (PostgreSQL only: SQLite has no roles.)</summary>
public sealed class RoleRightsTests : IAsyncLifetime
{
    private readonly PostgresDatabase database = new();
    private readonly string role = $"app_{Guid.NewGuid():N}";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private RecordsOptions AsApp => database.Options with
    {
        ConnectionString = new NpgsqlConnectionStringBuilder(database.Options.ConnectionString) { Username = role, Pooling = false }.ConnectionString,
        OwnerConnection = database.Options.ConnectionString,
    };

    public async ValueTask InitializeAsync()
    {
        await database.InitializeAsync();
        await PostgresDatabase.OnServer($"CREATE ROLE {role} LOGIN NOSUPERUSER");
        await RecordsDatabase.MigrateAsync(AsApp, Ct);
    }

    public async ValueTask DisposeAsync()
    {
        await database.DisposeAsync();
        await PostgresDatabase.OnServer($"DROP ROLE {role}");
    }

    [Fact]
    public async Task AppsRole_AtItsWork_WritesAndReadsAndChecksTheTrail()
    {
        await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed); // by the owner
        var contexts = new ContextFactory(AsApp);
        var recorder = new Recorder(contexts, database.Notices, database.Clock);
        await using var db = contexts.CreateDbContext();
        var material = await db.Materials.FirstAsync(Ct);
        var person = await db.Users.FirstAsync(Ct);

        var recorded = await recorder.Record(
            new(Guid.NewGuid(), "Price", person.Id, "Ida", "tablet", database.Clock.GetUtcNow(), new { }),
            async (own, stamp, ct) =>
            {
                own.Prices.Add(stamp.Price(material.Id, 3.5m));
                (await own.Materials.SingleAsync(m => m.Id == material.Id, ct)).PricePerTonne = 3.5m;
                return Written<int>.Of(1);
            }, Ct);

        Assert.Empty(recorded.Findings);
        Assert.True((await new TrailCheck(contexts).Run(Ct)).Holds);
    }

    [Fact]
    public async Task AppsRole_FactsAndTrail_CanBeNeitherChangedNorDeletedNorUnguarded()
    {
        await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);
        await using var owner = database.Open();
        var tables = owner.Model.GetEntityTypes().Where(t => AppendOnly.Includes(t.ClrType)).Select(t => t.GetTableName()!).Distinct().ToList();

        Assert.Contains("TrailRows", tables);
        foreach (var table in tables)
        {
            var column = owner.Model.GetEntityTypes().First(t => t.GetTableName() == table).GetProperties().Last().GetColumnName();
            foreach (var statement in new[]
            {
                $"""UPDATE "{table}" SET "{column}" = "{column}" """, $"""DELETE FROM "{table}" """, $"""TRUNCATE "{table}" CASCADE""",
                $"""ALTER TABLE "{table}" DISABLE TRIGGER ALL""", $"""DROP TRIGGER kept_as_written ON "{table}" """, $"""DROP TABLE "{table}" CASCADE""",
                $"""CREATE TRIGGER mine BEFORE INSERT ON "{table}" FOR EACH ROW EXECUTE FUNCTION refuse_change()""",
            }) await Refused(statement);
        }

        await Refused("""DELETE FROM "TrailHeads" """);
        await Refused("""DELETE FROM "Entries" """);
        await Refused("""DELETE FROM "__EFMigrationsHistory" """);
        await Refused("SET session_replication_role = replica");
        await Refused("CREATE OR REPLACE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS 'BEGIN RETURN NEW; END'");
        Assert.True((await new TrailCheck(database.Contexts).Run(Ct)).Holds);
    }

    [Fact]
    public async Task Owner_WithAllRights_IsStoppedByTheTriggers()
    {
        await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);
        await using var owner = database.Open();

        var refused = await Assert.ThrowsAsync<PostgresException>(() => owner.Send("""DELETE FROM "TrailRows" """));

        Assert.Contains("kept as written", refused.MessageText, StringComparison.Ordinal);
    }

    private async Task Refused(string statement)
    {
        await using var db = new ContextFactory(AsApp).CreateDbContext();
        var refused = await Record.ExceptionAsync(() => db.Send(statement));
        Assert.True(refused is PostgresException { SqlState: PostgresErrorCodes.InsufficientPrivilege }, $"{statement}: {refused?.Message ?? "done"}");
    }
}
