using MeltShop.Records.Databases;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.History;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Kept;

/// <summary>A shop's database of any earlier version moves forward with all that is in it.</summary>
public abstract class KeptSchemaTests(Database database)
{
    protected static CancellationToken Ct => TestContext.Current.CancellationToken;

    protected Database Database { get; } = database;

    /// <summary>The ending of its kept files.</summary>
    protected abstract string Ending { get; }

    [Fact]
    public async Task Migration_ThatLanded_HasAKeptDatabase()
    {
        await using var db = Database.Open();
        var names = db.Database.GetMigrations().Select(KeptSchemas.Name).ToList();
        if (KeptSchemas.IsKeeping) await Keep(KeptSchemas.Source(names[^1], Ending));

        var landed = names.Where(n => n != KeptSchemas.NotYetLanded).ToList();
        Assert.NotEmpty(landed);
        Assert.All(landed, n => Assert.True(
            File.Exists(KeptSchemas.File(n, Ending)), $"Kept/{n}.{Ending} is missing: run these tests with {KeptSchemas.Keeping}=1 before the next migration is added."));
    }

    [Fact]
    public async Task Database_OfEachKeptSchema_MovesForwardWithAllThatIsInIt()
    {
        await using var current = Database.Open();
        var kept = current.Database.GetMigrations().Select(KeptSchemas.Name).Where(n => File.Exists(KeptSchemas.File(n, Ending))).ToList();

        Assert.Contains("First", kept);
        foreach (var name in kept)
        {
            var options = await Load(KeptSchemas.File(name, Ending));
            var contexts = new ContextFactory(options);
            var before = await Counts(contexts);
            await RecordsDatabase.MigrateAsync(options, Ct);

            var after = await Counts(contexts);
            Assert.True(before["Readings"] > 0 && before["TrailRows"] > 8, $"{name} holds next to nothing.");
            Assert.All(before, table => Assert.Equal((table.Key, table.Value), (table.Key, after[table.Key])));
            Assert.Empty((await new TrailCheck(contexts).Run(Ct)).Faults);
            await ReadsLikeAnyOther(contexts);
            await using var db = contexts.CreateDbContext();
            Assert.Empty(await db.Database.GetPendingMigrationsAsync(Ct));
        }
    }

    [Theory]
    [InlineData("Weighings", "Lot", "''")]
    [InlineData("FurnaceMetals", "PlusMinusKg", "0.0")]
    [InlineData("FurnaceMetals", "LevelKg", "0.0")]
    public async Task Column_ThatCameLaterAndMayBeEmpty_IsFoundWhereSomebodyFillsIt(string table, string column, string nothing)
    {
        var options = await Load(KeptSchemas.File("First", Ending));
        await RecordsDatabase.MigrateAsync(options, Ct);
        var contexts = new ContextFactory(options);
        await using (var db = contexts.CreateDbContext())
        {
            await db.Unguard();
            await db.Send($"UPDATE \"{table}\" SET \"{column}\" = {nothing} WHERE \"Id\" = (SELECT MIN(\"Id\") FROM \"{table}\")");
        }

        var fault = Assert.Single((await new TrailCheck(contexts).Run(Ct)).Faults);
        Assert.Equal(("row.changed", table, column), (fault.Code, fault.Table, fault.Column));
    }

    /// <summary>Copies what a kept file holds into a database that nobody else uses.</summary>
    protected abstract Task<RecordsOptions> Load(string file);

    /// <summary>Writes the test's own database into a file.</summary>
    protected abstract Task Write(string file);

    /// <summary>The tables of the database, which may be fewer than those of the model; without the list of migrations.</summary>
    protected abstract string TablesStatement { get; }

    private async Task Keep(string file)
    {
        await HeatStory.Tell(await Foundry.Found(Database), HeatState.Closed);
        await Write(file);
    }

    private static async Task ReadsLikeAnyOther(IDbContextFactory<RecordsContext> contexts)
    {
        var rows = (await new HistoryPage(contexts).Load(ct: Ct)).Rows;
        Assert.NotEmpty(rows);
        foreach (var row in rows)
        {
            var heat = (await new HeatPage(contexts).Load(row.Id, Ct))!;
            Assert.NotEmpty(heat.Weighings);
            Assert.All(heat.Samples, s => Assert.All(s.Burns, b => Assert.All(b.Readings, r => Assert.NotEmpty(r.InstrumentText!))));
        }
    }

    private async Task<Dictionary<string, int>> Counts(IDbContextFactory<RecordsContext> contexts)
    {
        await using var db = await contexts.CreateDbContextAsync(Ct);
        var counts = new Dictionary<string, int>();
        foreach (var table in await db.AskAll<string>(TablesStatement))
            counts[table] = await db.Ask<int>($"""SELECT COUNT(*) AS "Value" FROM "{table}" """);
        return counts;
    }
}
