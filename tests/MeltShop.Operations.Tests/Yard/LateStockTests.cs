using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Yard;

/// <summary>A count shows what lay there then, whatever arrives later in the records of before it; 5000 kg of each material lie there at first.</summary>
public sealed class LateStockTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Count_ThatArrivesLate_IsHeldAgainstWhatLayThereThen(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var countedAt = shop.Now;
        shop.Clock.Advance(5);
        await Book(shop, StockKind.Received, 200);

        Assert.Equal(5100, await Book(shop, StockKind.Counted, 4900, countedAt), 6);

        await Stands(shop, 5100);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Entries_OfBeforeACountThatArriveAfterIt_ChangeNothingAfterIt(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        var before = shop.Now;
        shop.Clock.Advance(5);
        await Book(shop, StockKind.Counted, 5150);

        await Book(shop, StockKind.Received, 200, before);
        await Shop.Do(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), before, heat.Id, shop.PigIronId, 70, false));

        await Stands(shop, 5150);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Delivery_CorrectedAfterItsLotWasCounted_LeavesTheLotAtItsCount(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await Book(shop, StockKind.Received, 200, lot: "A");
        var received = await Last(shop);
        await Book(shop, StockKind.Counted, 190, lot: "A");

        await Correct(shop, received, 220);

        Assert.Equal(190, await Lot(shop, "A"), 6);
        await Stands(shop, 5190);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Delivery_CorrectedAfterAllAndThenItsLotWereCounted_LeavesEachCountWhatItShowed(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await Book(shop, StockKind.Received, 200, lot: "A");
        var received = await Last(shop);
        await Book(shop, StockKind.Counted, 5190);
        await Book(shop, StockKind.Counted, 180, lot: "A"); // 20 less of the lot, and of all

        await Correct(shop, received, 210);

        Assert.Equal(180, await Lot(shop, "A"), 6);
        await Stands(shop, 5190 - 30); // 5190 lay there with the lot's 210; 30 less of it were counted
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Count_MovedInTime_ShowsWhatLayThere(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        shop.Clock.Advance(5);
        await Book(shop, StockKind.Counted, 4900);
        shop.Clock.Advance(5);
        await Correct(shop, await Last(shop), 4900, shop.Now);
        await Stands(shop, 4900);

        var first = await Last(shop);
        shop.Clock.Advance(5);
        await Book(shop, StockKind.Counted, 4800);
        shop.Clock.Advance(5);
        await Correct(shop, first, 4700, shop.Now); // past the other one

        await Stands(shop, 4700);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Inoculation_TakenBackAfterACount_LeavesTheCountWhatItShowed(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var ladle = await shop.Poured(await shop.Bath());
        var inoculation = (await Shop.Do(shop.Get<RecordInoculation>(), shop.Melter, new(
            Guid.NewGuid(), shop.Now, ladle.Id, InoculationPlace.Stream, shop.InoculantId, 0.9))).Value;
        await Shop.Do(shop.Get<BookStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.InoculantId, StockKind.Counted, 4990));

        await Shop.Do(shop.Get<TakeBack>(), shop.Melter, new(Guid.NewGuid(), shop.Now, LadleEntryKind.Inoculation, inoculation, "hopper was shut"));

        await using var db = shop.Db();
        Assert.Equal(4990, (await db.Materials.SingleAsync(m => m.Id == shop.InoculantId, Soon)).StockKg!.Value, 6);
        Assert.Empty((await shop.Get<TrailCheck>().Run(Soon)).Faults);
    }

    private static async Task<double> Book(Shop shop, StockKind kind, double kg, DateTimeOffset? at = null, string? lot = null) =>
        (await Shop.Do(shop.Get<BookStock>(), shop.Melter, new(Guid.NewGuid(), at ?? shop.Now, shop.PigIronId, kind, kg) { Lot = lot })).Value;

    private static async Task Correct(Shop shop, long line, double kg, DateTimeOffset? at = null) =>
        Assert.Empty((await Shop.Do(shop.Get<CorrectStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, line, kg, "read wrongly", at))).Findings);

    private static async Task<long> Last(Shop shop)
    {
        await using var db = shop.Db();
        return (await db.InForce<StockFact>().Where(s => s.MaterialId == shop.PigIronId).OrderBy(s => s.ObservedAt).LastAsync(Soon)).Id;
    }

    private static async Task<double> Lot(Shop shop, string lot)
    {
        await using var db = shop.Db();
        return await db.InForce<StockFact>().Where(s => s.MaterialId == shop.PigIronId && s.Lot == lot).SumAsync(s => s.Kg, Soon);
    }

    private static async Task Stands(Shop shop, double kg)
    {
        await using var db = shop.Db();
        Assert.Equal(kg, (await db.Materials.SingleAsync(m => m.Id == shop.PigIronId, Soon)).StockKg!.Value, 6);
        Assert.Empty((await shop.Get<TrailCheck>().Run(Soon)).Faults);
    }
}
