using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Stories;

/// <summary>
/// Two people at the same thing at the same moment. PostgreSQL lets both read before either has written; SQLite has one writer. A gate holds what both
/// must write, until they wait there.
/// </summary>
public sealed class AtOnceTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Fact]
    public async Task TwoBurns_SetAsideAtOnce_LeaveTheMeanOfTheThird()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var sample = await Coin(shop);
        await using var db = shop.Db();
        await using var gate = await db.Database.BeginTransactionAsync(Soon);
        await db.Database.ExecuteSqlAsync($"""LOCK TABLE "BurnDecisions" IN SHARE MODE""", Soon);

        Task<Outcome<IReadOnlyDictionary<string, double>>>[] both = [Aside(shop, sample, 1), Aside(shop, sample, 2)];
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        Assert.All(await Task.WhenAll(both), outcome => Assert.True(outcome.Succeeded));
        var mean = await db.Set<SampleMean>().SingleAsync(m => m.SampleId == sample, Soon);
        Assert.Equal((3.7, 1), (mean.Percent, mean.Count));
    }

    [Fact]
    public async Task Burn_SetAsideWhileItsSampleIsCorrected_IsNotLost()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var sample = await Coin(shop);
        await using var db = shop.Db();
        var heatId = await db.Samples.Where(s => s.Id == sample).Select(s => s.HeatId).SingleAsync(Soon);
        await using var gate = await db.Database.BeginTransactionAsync(Soon);
        await db.Database.ExecuteSqlAsync($"""LOCK TABLE "SampleMeans" IN SHARE MODE""", Soon);

        var correction = shop.Get<CorrectSample>().Run(shop.Melter, new(
            Guid.NewGuid(), shop.Now, sample, heatId, null, SampleKind.Bath, null, "18", null, "coin number"), Soon);
        await shop.Waiting(1);
        var aside = Aside(shop, sample, 1);
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        Assert.True((await correction).Succeeded);
        Assert.Equal("fact.corrected", Assert.Single((await aside).Findings).Code);
    }

    [Fact]
    public async Task Entries_AtTheFurnaceOfAHeatThatIsBeingEnded_AreRefused()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var heat = await shop.Bath();
        var iron = new Dictionary<string, double> { ["C"] = 3.4 };
        await using var db = shop.Db();
        await using var gate = await db.Database.BeginTransactionAsync(Soon);
        await db.Database.ExecuteSqlAsync($"""SELECT 1 FROM "Furnaces" FOR UPDATE""", Soon);

        var close = shop.Get<CloseHeat>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, 0), Soon);
        await shop.Waiting(1);
        Task<IReadOnlyList<Metallurgy.Finding>>[] late =
        [
            Findings(shop.Get<WeighIn>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, shop.SteelId, 100, true), Soon)),
            Findings(shop.Get<PigOut>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, 50, null), Soon)),
            Findings(shop.Get<PourBack>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, null, 50, iron, "rest"), Soon)),
            Findings(shop.Get<PreparePocket>().Run(shop.Melter, shop.Pocket(heat, 500), Soon)),
        ];
        await shop.Waiting(5);
        await gate.RollbackAsync(Soon);

        Assert.True((await close).Succeeded);
        Assert.All(await Task.WhenAll(late), findings => Assert.Equal(("heatId", "state.wrong"), findings.Select(f => (f.Path, f.Code)).Single()));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Count_WhileAWeighingIsBeingBooked_ShowsWhatWasCounted(bool counted)
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var heat = await shop.StartHeat();
        await using var db = shop.Db();
        if (!counted)
        {
            // as if the material had come into the yard today
            await db.Database.ExecuteSqlAsync($"""ALTER TABLE "StockFacts" DISABLE TRIGGER USER""", Soon);
            await db.StockFacts.Where(s => s.MaterialId == shop.SteelId).ExecuteDeleteAsync(Soon);
            await db.Materials.Where(m => m.Id == shop.SteelId).ExecuteUpdateAsync(m => m.SetProperty(x => x.StockKg, (double?)null), Soon);
        }

        await using var gate = await db.Database.BeginTransactionAsync(Soon);
        await db.Database.ExecuteSqlAsync($"""SELECT 1 FROM "Materials" WHERE "Id" = {shop.SteelId} FOR UPDATE""", Soon);
        var weigh = shop.Get<WeighIn>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, shop.SteelId, 50, false), Soon);
        await shop.Waiting(1);
        var count = shop.Get<BookStock>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, shop.SteelId, StockKind.Counted, 4000), Soon);
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        Assert.True((await weigh).Succeeded);
        Assert.Equal(4000, (await count).Value);
        Assert.Equal(4000, (await db.Materials.SingleAsync(m => m.Id == shop.SteelId, Soon)).StockKg!.Value, 6);
        Assert.Equal(4000, await db.InForce<StockFact>().Where(s => s.MaterialId == shop.SteelId).SumAsync(s => s.Kg, Soon), 6);
    }

    [Fact]
    public async Task Weighing_CorrectedByTwoAtOnce_TellsTheSecondWhoDidItAndWhy()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var heat = await shop.StartHeat();
        var weighing = await shop.WeighIn(heat, shop.SteelId, 100);
        await using var db = shop.Db();
        await using var gate = await db.Database.BeginTransactionAsync(Soon);
        await db.Database.ExecuteSqlAsync($"""SELECT 1 FROM "Furnaces" FOR UPDATE""", Soon);

        var both = new[] { 110d, 120 }.Select(kg => shop.Get<CorrectWeighing>().Run(
            shop.Melter, new(Guid.NewGuid(), shop.Now, weighing, heat.Id, shop.SteelId, kg, false, "read wrongly"), Soon)).ToList();
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        var outcomes = await Task.WhenAll(both);
        Assert.Single(outcomes, o => o.Succeeded);
        var finding = Assert.Single(outcomes.Single(o => !o.Succeeded).Findings);
        Assert.Equal("fact.corrected", finding.Code);
        Assert.Equal(["The melter", "read wrongly"], [finding.Arguments[0], finding.Arguments[2]]);
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Fact]
    public async Task CoinOnItsWay_TypedInByTwoAtOnce_HasOneResult()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var heat = await shop.StartHeat();
        var coin = (await Shop.Do(shop.Get<SendCoin>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, null, SampleKind.Bath, "7"))).Value;
        await using var db = shop.Db();
        await using var gate = await db.Database.BeginTransactionAsync(Soon);
        await db.Database.ExecuteSqlAsync($"""LOCK TABLE "Samples" IN SHARE MODE""", Soon);

        var both = new[] { 3.5, 3.6 }.Select(c => shop.Get<RecordSample>().Run(
            shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, null, SampleKind.Bath, [Shop.Burn(("C", c))], "7", CoinOnItsWayId: coin), Soon)).ToList();
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        var outcomes = await Task.WhenAll(both);
        Assert.Single(outcomes, o => o.Succeeded);
        Assert.Equal("coin.notWaiting", Assert.Single(outcomes.Single(o => !o.Succeeded).Findings).Code);
    }

    [Fact]
    public async Task CoinOnItsWay_ThatIsLostAndTypedInAtOnce_IsOneOfTheTwo()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var heat = await shop.StartHeat();
        var coin = (await Shop.Do(shop.Get<SendCoin>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, null, SampleKind.Bath, "7"))).Value;
        await using var db = shop.Db();
        await using var gate = await db.Database.BeginTransactionAsync(Soon);
        await db.Database.ExecuteSqlAsync($"""LOCK TABLE "Samples", "CoinsOnTheirWay" IN SHARE MODE""", Soon);

        var typed = shop.Get<RecordSample>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, null, SampleKind.Bath, [Shop.Burn(("C", 3.5))], "7", CoinOnItsWayId: coin), Soon);
        await shop.Waiting(1);
        var lost = shop.Get<LoseCoin>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, coin, "not found"), Soon);
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        Assert.True((await typed).Succeeded);
        Assert.Equal("coin.notWaiting", Assert.Single((await lost).Findings).Code);
    }

    [Fact]
    public async Task Site_SetUpByTwoAtOnce_IsOne()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        await using var db = shop.Db();
        await db.Sites.ExecuteDeleteAsync(Soon);
        await using var gate = await db.Database.BeginTransactionAsync(Soon);
        await db.Database.ExecuteSqlAsync($"""LOCK TABLE "Sites" IN SHARE MODE""", Soon);

        var both = new[] { "TB", "OF" }.Select(code => shop.Get<SetUpSite>().Run(shop.Administrator, new(Guid.NewGuid(), shop.Now, code, "Talbrück", "Europe/Berlin", "EUR"), Soon)).ToList();
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        var outcomes = await Task.WhenAll(both);
        Assert.Single(outcomes, o => o.Succeeded);
        Assert.Equal(("code", "site.exists"), Assert.Single(outcomes.Single(o => !o.Succeeded).Findings) is var finding ? (finding.Path, finding.Code) : default);
    }

    /// <summary>Three burns of 3.5, 3.6 and 3.7 % C.</summary>
    private static async Task<long> Coin(Shop shop)
    {
        var heat = await shop.StartHeat();
        return (await Shop.Do(shop.Get<RecordSample>(), shop.Melter, new(
            Guid.NewGuid(), shop.Now, heat.Id, null, SampleKind.Bath, [Shop.Burn(("C", 3.5)), Shop.Burn(("C", 3.6)), Shop.Burn(("C", 3.7))]))).Value;
    }

    private static Task<Outcome<IReadOnlyDictionary<string, double>>> Aside(Shop shop, long sample, int burn) =>
        shop.Get<SetBurnAside>().Run(shop.Metallurgist, new(Guid.NewGuid(), shop.Now, sample, burn, "cracked"), Soon);

    private static async Task<IReadOnlyList<Metallurgy.Finding>> Findings<TResult>(Task<Outcome<TResult>> outcome) => (await outcome).Findings;
}
