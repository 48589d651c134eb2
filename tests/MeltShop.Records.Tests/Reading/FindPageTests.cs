using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Finding;
using MeltShop.Records.Tests.Databases;

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

    [Theory]
    [InlineData(null)]
    [InlineData("   ")]
    [InlineData("nothing is called so")]
    [InlineData("%")]
    [InlineData("_")]
    public async Task Find_WordsThatNothingHas_FindsNothing(string? words)
    {
        await (await Foundry.Found(database)).Heat(HeatState.Closed);

        Assert.Empty((await Page.Load(words, Ct)).Rows);
    }

    [Fact]
    public async Task Find_MoreThanIsShown_SaysSo()
    {
        var foundry = await Foundry.Found(database);
        for (var n = 0; n <= FindPage.Most; n++) await foundry.Heat(HeatState.Closed);

        var found = await Page.Load("-", Ct);

        Assert.True(found.More);
        Assert.Equal(FindPage.Most, found.Rows.Count(row => row.Kind == FoundKind.Heat));
    }

    private FindPage Page => new(database.Contexts);

    private async Task Finds(string words, FoundKind kind, long id) =>
        Assert.Contains((await Page.Load(words, Ct)).Rows, row => row.Kind == kind && row.Id == id);
}

public sealed class FindPageTestsOnSqlite(SqliteDatabase database) : FindPageTests(database), IClassFixture<SqliteDatabase>;

public sealed class FindPageTestsOnPostgres(PostgresDatabase database) : FindPageTests(database), IClassFixture<PostgresDatabase>;
