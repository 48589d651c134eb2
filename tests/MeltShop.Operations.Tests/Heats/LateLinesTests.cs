using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Heats;

/// <summary>A dip shows what was in the furnace then, whatever arrives later in the records of before it; masses by hand, steel yields 97 %.</summary>
public sealed class LateLinesTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Dip_ThatArrivesLate_IsHeldAgainstWhatWasThereThen(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 1000);
        var dippedAt = shop.Now;
        shop.Clock.Advance(5);
        await shop.WeighIn(heat, shop.SteelId, 100);

        Assert.Equal(-20, await Dip(shop, dippedAt, 950), 6);

        Assert.Equal(950 + 97, await shop.InFurnace(), 6);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Dips_ThatArriveInTheWrongOrder_EachShowTheirLevel(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await shop.StartHeat();
        var first = shop.Now;
        shop.Clock.Advance(5);
        await Dip(shop, shop.Now, 700);

        await Dip(shop, first, 800);

        await using var db = shop.Db();
        Assert.Equal([800, -100], await db.InForce<FurnaceMetal>().OrderBy(m => m.ObservedAt).Select(m => m.Kg).ToListAsync(Soon));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Entries_OfBeforeADipThatArriveAfterIt_ChangeNothingAfterIt(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var ladle = await shop.Prepared(heat, 900);
        var before = shop.Now;
        shop.Clock.Advance(5);
        await Dip(shop, shop.Now, 1000);

        await Done(shop.Get<RecordTap>(), shop, new(Guid.NewGuid(), before, ladle.Id, ladle.Version, 900, null));
        Assert.Equal(1000, await shop.InFurnace(), 6);
        await Done(shop.Get<WeighIn>(), shop, new(Guid.NewGuid(), before, heat.Id, shop.SteelId, 100, true));
        Assert.Equal(1000, await shop.InFurnace(), 6);
        await Done(shop.Get<PigOut>(), shop, new(Guid.NewGuid(), before, heat.Id, 50, null));
        Assert.Equal(1000, await shop.InFurnace(), 6);
        await Done(shop.Get<PourBack>(), shop, new(Guid.NewGuid(), before, heat.Id, null, 30, new Dictionary<string, double> { ["C"] = 3.4 }, "rest"));

        Assert.Equal(1000, await shop.InFurnace(), 6);
        await using var db = shop.Db();
        var dip = await db.InForce<FurnaceMetal>().SingleAsync(m => m.Kind == FurnaceMetalKind.Dipped, Soon);
        Assert.Equal((1000, (string?)null), (dip.LevelKg!.Value, dip.Reason)); // it only follows: nobody gave a reason
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Dip_MovedInTime_ShowsItsLevelThere(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 1000);
        await Dip(shop, shop.Now, 950);
        shop.Clock.Advance(5);
        var between = shop.Now;

        await Move(shop, await LastDip(shop), 950, between);
        Assert.Equal(950, await shop.InFurnace(), 6);

        var first = await LastDip(shop);
        shop.Clock.Advance(5);
        await Dip(shop, shop.Now, 900);
        shop.Clock.Advance(5);
        await Move(shop, first, 850, shop.Now); // past the other one
        Assert.Equal(850, await shop.InFurnace(), 6);

        await Move(shop, await LastDip(shop), 960, between); // and back
        Assert.Equal(900, await shop.InFurnace(), 6);
    }

    [Fact]
    public async Task PlusMinus_ThatNobodyCanSayAnyMore_IsTakenAway()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await shop.StartHeat();
        await Done(shop.Get<DipFurnace>(), shop, new(Guid.NewGuid(), shop.Now, shop.FurnaceId, 950, null, "rod", 15));

        await Done(shop.Get<CorrectMetal>(), shop, new(Guid.NewGuid(), shop.Now, await LastDip(shop), 950, null, "the rod had no marks"));

        await using var db = shop.Db();
        Assert.Null((await db.InForce<FurnaceMetal>().SingleAsync(Soon)).PlusMinusKg);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Heat_CalledOffAfterOnlyAPourBack_LeavesAHeelOfUnknownAnalysis(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var iron = new Dictionary<string, double> { ["C"] = 3.4 };
        await Done(shop.Get<DipFurnace>(), shop, new(Guid.NewGuid(), shop.Now, shop.FurnaceId, 300, iron, "first heel"));
        var heat = await shop.StartHeat();
        await Done(shop.Get<PourBack>(), shop, new(Guid.NewGuid(), shop.Now, heat.Id, null, 200, iron, "rest"));

        Assert.True((await Shop.Do(shop.Get<CancelHeat>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, "no power"))).Succeeded);

        await using var db = shop.Db();
        var heel = await db.InForce<Heel>().Include(h => h.Percents).OrderBy(h => h.ObservedAt).LastAsync(Soon);
        Assert.Equal((500d, (long?)heat.Id), (heel.Kg, heel.FromHeatId));
        Assert.Empty(heel.Percents);
    }

    [Fact]
    public async Task Furnace_EmptiedAtTheEnd_KeepsNoWordsOfTheProgram()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();

        Assert.True((await shop.Close(heat, await shop.InFurnace() * 1.01)).Succeeded);

        await using var db = shop.Db();
        var line = await db.FurnaceMetals.SingleAsync(m => m.Kind == FurnaceMetalKind.Dipped, Soon);
        Assert.Equal((0, (string?)null), (line.LevelKg!.Value, line.Reason));
    }

    private static async Task<double> Dip(Shop shop, DateTimeOffset at, double kg) =>
        await Done(shop.Get<DipFurnace>(), shop, new(Guid.NewGuid(), at, shop.FurnaceId, kg, null, "load cell"));

    private static Task<long> Move(Shop shop, long line, double kg, DateTimeOffset at) =>
        Done(shop.Get<CorrectMetal>(), shop, new(Guid.NewGuid(), shop.Now, line, kg, null, "another time", at));

    private static async Task<long> LastDip(Shop shop)
    {
        await using var db = shop.Db();
        return (await db.InForce<FurnaceMetal>().Where(m => m.Kind == FurnaceMetalKind.Dipped).OrderBy(m => m.ObservedAt).LastAsync(Soon)).Id;
    }

    private static async Task<TResult> Done<TCommand, TResult>(Operation<TCommand, TResult> operation, Shop shop, TCommand command)
        where TCommand : Command => (await Shop.Do(operation, shop.Melter, command)).Value;
}
