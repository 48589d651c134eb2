using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Tests.Yard;

/// <summary>A lot from its delivery to the furnace and the pocket, on both databases.</summary>
public sealed class LotTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Lot_DeliveredAndUsed_IsLeftWithTheRest(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await Book(shop, shop.AlloyId, StockKind.Received, 400, "A 17");
        await Book(shop, shop.AlloyId, StockKind.Received, 300, "B 3");
        await Book(shop, shop.InoculantId, StockKind.Received, 200, "I 1");
        await Book(shop, shop.SteelId, StockKind.Received, 1000, "S 9");
        var heat = await shop.Bath();
        await Shop.Do(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, shop.SteelId, 12, true) { Lot = " S 9 " });
        var pocket = shop.Pocket(heat, 600);
        var id = (await Shop.Do(shop.Get<PreparePocket>(), shop.Melter, pocket with
        {
            Extras = pocket.Extras with { AlloyKg = 11, Lots = new(Alloy: "A 17", Inoculant: "I 1") },
        })).Value.TreatedLadleId;
        await Shop.Do(shop.Get<RecordTap>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, (await shop.Treated(id)).Version, 600, null));
        await Shop.Do(shop.Get<RecordInoculation>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, InoculationPlace.Stream, shop.InoculantId, 0.6, "I 1"));

        Assert.Equal([("A 17", 389.0), ("B 3", 300.0)], await Lots(shop, shop.AlloyId));
        Assert.Equal([("I 1", 200 - 2.4 - 0.6)], await Lots(shop, shop.InoculantId));
        Assert.Equal([("S 9", 988.0)], await Lots(shop, shop.SteelId));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Lot_WrongAtAWeighing_IsCorrectedWithAReasonAndSoAreBothLots(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await Book(shop, shop.SteelId, StockKind.Received, 1000, "S 9");
        await Book(shop, shop.SteelId, StockKind.Received, 500, "S 10");
        var heat = await shop.Bath();
        var stock = (await shop.Get<YardPage>().Material(shop.SteelId, Soon))!.StockKg;
        var id = (await Shop.Do(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, shop.SteelId, 100, true) { Lot = "S 9" })).Value;
        CorrectWeighing.Command Correct(long of, string? lot, double kg = 100) =>
            new(Guid.NewGuid(), shop.Now, of, heat.Id, shop.SteelId, kg, true, "read from the wrong bag") { Lot = lot };
        await shop.Refuses(shop.Get<CorrectWeighing>(), shop.Melter, Correct(id, "S 9"), "", "correction.nothing");
        await shop.Refuses(shop.Get<CorrectWeighing>(), shop.Melter, Correct(id, "S 10") with { Reason = "" }, "reason", "text.missing");

        var right = (await Shop.Do(shop.Get<CorrectWeighing>(), shop.Melter, Correct(id, " S 10 "))).Value;

        Assert.Equal([("S 10", 400.0), ("S 9", 1000.0)], (await Lots(shop, shop.SteelId)).Order());
        Assert.Equal(stock!.Value - 100, (await shop.Get<YardPage>().Material(shop.SteelId, Soon))!.StockKg!.Value, 6);
        right = (await Shop.Do(shop.Get<CorrectWeighing>(), shop.Melter, Correct(right, null, 90))).Value; // the lot was right
        Assert.Equal([("S 10", 410.0), ("S 9", 1000.0)], (await Lots(shop, shop.SteelId)).Order());
        await Shop.Do(shop.Get<CorrectWeighing>(), shop.Melter, Correct(right, "", 90)); // nobody can say which it was
        await using var db = shop.Db();
        Assert.Equal(["S 9", "S 10", "S 10", null], db.Weighings.Where(w => w.MaterialId == shop.SteelId && w.IntoBath).OrderBy(w => w.Id).Select(w => w.Lot));
        Assert.Equal([("S 10", 500.0), ("S 9", 1000.0)], (await Lots(shop, shop.SteelId)).Order());
    }

    [Fact]
    public async Task Lot_Counted_MovesTheStockByWhatItWasOff()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await Book(shop, shop.AlloyId, StockKind.Received, 400, "A 17");

        Assert.Equal(5390, await Book(shop, shop.AlloyId, StockKind.Counted, 390, "A 17"));
        Assert.Equal([("A 17", 390.0)], await Lots(shop, shop.AlloyId));
        Assert.Equal(5390, (await shop.Get<YardPage>().Material(shop.AlloyId, Soon))!.StockKg);
    }

    private static async Task<double> Book(Shop shop, long materialId, StockKind kind, double kg, string lot) =>
        (await Shop.Do(shop.Get<BookStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, materialId, kind, kg) { Lot = lot })).Value;

    private static async Task<IEnumerable<(string, double)>> Lots(Shop shop, long materialId) =>
        (await shop.Get<YardPage>().Material(materialId, Soon))!.Lots.Select(l => (l.Name, Math.Round(l.LeftKg, 9)));
}
