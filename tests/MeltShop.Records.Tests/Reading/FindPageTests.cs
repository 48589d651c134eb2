using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Finding;
using MeltShop.Records.Tests.Databases;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Reading;

public abstract class FindPageTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Find_PartOfANumberOrCode_WhateverItsCase_FindsEachKind()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat(HeatState.Closed);

        var order = Facts.Order($"{foundry.Grade.Code}/4711", foundry.Grade.Id);
        await foundry.Write("TakeOrder", (db, _) => db.Add(order));

        await Finds(order.Number.ToLowerInvariant(), FoundKind.Order, order.Id);
        await Finds("BRACK", FoundKind.Order, order.Id);
        await Finds(heat.Number[^4..].ToLowerInvariant(), FoundKind.Heat, heat.Id);
        await Finds(foundry.Steel.Code[1..].ToLowerInvariant(), FoundKind.Material, foundry.Steel.Id);
        await Finds(foundry.Steel.Name.ToUpperInvariant(), FoundKind.Material, foundry.Steel.Id);
        await Finds(foundry.Furnace.Code, FoundKind.Furnace, foundry.Furnace.Id);
        await Finds(foundry.Grade.Code, FoundKind.Grade, foundry.Grade.Id);
    }

    [Fact]
    public async Task Find_WhatStandsOnABagOrACoinOrADoor_LeadsToWhereItBelongs()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);
        var foundry = story.Foundry;
        var (coin, lot) = ($"k{foundry.Steel.Id}", $"Lot {foundry.Steel.Id}");
        var instrument = Facts.Instrument($"{foundry.Grade.Code}-I");
        await foundry.Write("Rest", (db, stamp) =>
        {
            db.Add(instrument);
            db.AddRange(stamp.Stock(foundry.Steel.Id, 10, lot: lot), stamp.Stock(foundry.Steel.Id, 12, lot: lot));
            db.AddRange(stamp.Coin(story.Heat.Id, 3.6, isGrey: false, number: coin.ToUpperInvariant()), stamp.Sent(story.Heat.Id, coin));
        });

        await Finds(foundry.Ladle.Code.ToLowerInvariant(), FoundKind.Ladle, foundry.Ladle.Id);
        await Finds(instrument.Code, FoundKind.Instrument, instrument.Id);
        Assert.Equal([new(FoundKind.Lot, foundry.Steel.Id, lot, foundry.Steel.Name)], (await Page.Load(lot, ct: Ct)).Rows.Where(row => row.Kind == FoundKind.Lot));
        Assert.Equal(
            [new(FoundKind.Coin, story.Heat.Id, coin, story.Heat.Number), new(FoundKind.Coin, story.Heat.Id, coin.ToUpperInvariant(), story.Heat.Number)],
            (await Page.Load(coin, ct: Ct)).Rows.Where(row => row.Kind == FoundKind.Coin).OrderByDescending(row => row.Code, StringComparer.Ordinal));
        Assert.DoesNotContain((await Page.Load(coin[..^1] + "x", ct: Ct)).Rows, row => row.Kind == FoundKind.Coin);
    }

    /// <summary>Who may not see the people of the shop does not find them either.</summary>
    [Fact]
    public async Task Find_AName_FindsThePersonForWhoMaySeePeople()
    {
        var person = (await Foundry.Found(database)).Person;

        Assert.Contains(new(FoundKind.Person, person.Id, person.UserName!, "Ida Anders"), (await Page.Load(person.UserName!.ToUpperInvariant(), people: true, Ct)).Rows);
        Assert.DoesNotContain((await Page.Load(person.UserName!, ct: Ct)).Rows, row => row.Kind == FoundKind.Person);
    }

    [Fact]
    public async Task Find_ACoinOrALotAmongMany_IsALookIntoItsIndex()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);
        var stock = story.Foundry.Steel.Id;
        await story.Foundry.Write("Rest", (db, stamp) => db.Add(stamp.Stock(stock, 10, lot: "first")));
        await using var db = database.Open();
        await Fill(db, "Samples", "CoinNumber");
        await Fill(db, "StockFacts", "Lot");

        Assert.Matches("IX_Samples_CoinNumber", await PlanOf(FindPage.Coins(db, "17").Take(21).ToQueryString()));
        Assert.DoesNotMatch(Scan("Samples", "s"), await PlanOf(FindPage.Coins(db, "17").Take(21).ToQueryString()));
        Assert.Matches("IX_StockFacts_Lot", await PlanOf(FindPage.Lots(db, "first").Take(21).ToQueryString()));
        Assert.DoesNotMatch(Scan("StockFacts", "s"), await PlanOf(FindPage.Lots(db, "first").Take(21).ToQueryString()));
    }

    protected abstract Task<string> PlanOf(string statement);

    /// <summary>How the database says that it reads all of a table.</summary>
    protected abstract string Scan(string table, string alias);

    /// <summary>Three thousand rows like the last one, each called otherwise.</summary>
    private static async Task Fill(RecordsContext db, string table, string name)
    {
        var columns = db.Model.GetEntityTypes().Single(t => t.GetTableName() == table).GetProperties().Select(p => p.GetColumnName()).Where(c => c != "Id").ToList();
        Assert.Equal(3000, await db.Send($"""
            WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < 2999)
            INSERT INTO "{table}" ({string.Join(", ", columns.Select(c => $"\"{c}\""))})
            SELECT {string.Join(", ", columns.Select(c => c == name ? "'many-' || n.i" : $"t.\"{c}\""))} FROM n, "{table}" AS t WHERE t."Id" = (SELECT MAX("Id") FROM "{table}")
            """));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("   ")]
    [InlineData("nothing is called so")]
    [InlineData("%")]
    [InlineData("_")]
    public async Task Find_WordsThatNothingHas_FindsNothing(string? words)
    {
        await (await Foundry.Found(database)).Heat(HeatState.Closed);

        Assert.Empty((await Page.Load(words, ct: Ct)).Rows);
    }

    [Fact]
    public async Task Find_MoreThanIsShown_SaysSo()
    {
        var foundry = await Foundry.Found(database);
        for (var n = 0; n <= FindPage.Most; n++) await foundry.Heat(HeatState.Closed);

        var found = await Page.Load(foundry.Site.Code + "-", ct: Ct);

        Assert.True(found.More);
        Assert.Equal(FindPage.Most, found.Rows.Count(row => row.Kind == FoundKind.Heat));
    }

    private FindPage Page => new(database.Contexts);

    private async Task Finds(string words, FoundKind kind, long id) =>
        Assert.Contains((await Page.Load(words, ct: Ct)).Rows, row => row.Kind == kind && row.Id == id);
}

public sealed class FindPageTestsOnSqlite(SqliteDatabase database) : FindPageTests(database), IClassFixture<SqliteDatabase>
{
    protected override Task<string> PlanOf(string statement) => Plans.OfSqlite(database, statement);

    protected override string Scan(string table, string alias) => $@"SCAN {alias}\b";
}

public sealed class FindPageTestsOnPostgres(PostgresDatabase database) : FindPageTests(database), IClassFixture<PostgresDatabase>
{
    protected override Task<string> PlanOf(string statement) => Plans.OfPostgres(database, statement);

    protected override string Scan(string table, string alias) => $"Seq Scan on \"{table}\"";
}
