using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Floor;
using MeltShop.Records.Tests.Databases;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Reading;

public abstract class FloorPageTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Floor_FurnaceWithHeat_ShowsWhereTheHeatStands()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database), HeatState.Tapping);
        await using (var db = database.Open()) await db.Furnaces.Where(f => f.Id == story.Foundry.Furnace.Id).ExecuteUpdateAsync(f => f.SetProperty(x => x.LiquidKg, 4700), Ct);

        var furnace = Assert.Single((await Page.Load(Ct)).Furnaces, f => f.Id == story.Foundry.Furnace.Id);

        Assert.Equal((4700, story.Heat.Number, HeatState.Tapping), (furnace.LiquidKg, furnace.Heat!.Number, furnace.Heat.State));
        // The ladle was sampled later, and says nothing about the furnace.
        Assert.Equal((1478, story.Bath.Id), (furnace.Heat.Temperature!.TemperatureC, furnace.Heat.Sample!.Id));
    }

    [Fact]
    public async Task Floor_EmptyFurnace_HasNoHeat()
    {
        var foundry = await Foundry.Found(database);
        await foundry.Heat(HeatState.Closed);

        var furnace = Assert.Single((await Page.Load(Ct)).Furnaces, f => f.Id == foundry.Furnace.Id);

        Assert.Equal((0, null), (furnace.LiquidKg, furnace.Heat));
    }

    [Fact]
    public async Task Floor_Ladles_AreOpenOrHeld()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database), HeatState.Tapping);
        await story.Foundry.Write("PreparePocket", (db, _) => db.TreatedLadles.Add(new()
        {
            HeatId = story.Heat.Id, LadleId = story.Foundry.Ladle.Id, Ordinal = 2, State = TreatedLadleState.Prepared,
        }));

        var floor = await Page.Load(Ct);

        var held = Assert.Single(floor.HeldLadles, l => l.HeatId == story.Heat.Id);
        Assert.Equal((story.Heat.Number, 1, 995, 11.5), (held.HeatNumber, held.Ordinal, held.Kg, held.MinutesToFloor));
        var open = Assert.Single(floor.OpenLadles, l => l.HeatId == story.Heat.Id);
        Assert.Equal((2, null), (open.Ordinal, open.Kg));
    }

    private FloorPage Page => new(database.Contexts);
}

public sealed class FloorPageTestsOnSqlite(SqliteDatabase database) : FloorPageTests(database), IClassFixture<SqliteDatabase>;

public sealed class FloorPageTestsOnPostgres(PostgresDatabase database) : FloorPageTests(database), IClassFixture<PostgresDatabase>;
