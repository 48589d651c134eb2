using MeltShop.Charging;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Tests.Yard;

/// <summary>Bins from a delivery to the charge that leaves one out, on both databases.</summary>
public sealed class BinTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Lot_DeliveredIntoABinAndMoved_LiesWhereItWasPutLast(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await Book(shop, 300, "S 9", " 4 ");
        await Book(shop, 200, "S 10", "4");
        await Book(shop, 100, "S 9", null); // nobody says where: it lies where it lay
        Assert.Equal([("S 10", "4"), ("S 9", "4")], await Places(shop));

        shop.Clock.Advance(10);
        var before = shop.Now.AddMinutes(-5);
        await Move(shop, "S 9", "7 north");
        await Shop.Do(shop.Get<MoveLot>(), shop.Melter, new(Guid.NewGuid(), before, shop.SteelId, "S 9", "2")); // arrives late from a tablet
        await Move(shop, "S 10", " ");

        Assert.Equal([("S 10", null), ("S 9", "7 north")], await Places(shop));
        await Move(shop, null, "11");
        Assert.Equal("11", (await Steel(shop)).PileBin);
        Assert.Equal(["7 north", "11"], (await Steel(shop)).Bins());
        Assert.Equal(5000, (await Steel(shop)).PileKg);
    }

    [Fact]
    public async Task Move_OfWhatIsNotThere_IsRefusedAtItsField()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        MoveLot.Command Wrong(string? lot, string bin) => new(Guid.NewGuid(), shop.Now, shop.SteelId, lot, bin);

        await shop.Refuses(shop.Get<MoveLot>(), shop.Melter, Wrong("never seen", "4"), "lot", "lot.unknown");
        await shop.Refuses(shop.Get<MoveLot>(), shop.Melter, Wrong(null, new string('b', 31)), "bin", "text.tooLong");
        await shop.Refuses(shop.Get<MoveLot>(), shop.Melter, Wrong(null, "4") with { MaterialId = 99 }, "materialId", "material.unknown");
        await shop.Refuses(
            shop.Get<BookStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.SteelId, StockKind.Received, 1) { Bin = new string('b', 31) }, "bin", "text.tooLong");
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Plan_ThatLeavesABinOut_TakesNothingFromThereToTheEnd(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await Shop.Do(shop.Get<BookStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.SteelId, StockKind.Counted, 0));
        await Book(shop, 400, "S 9", "4");
        await Book(shop, 250, "S 10", "5");
        var choice = new ChargeChoice(shop.FurnaceId, shop.DuctileId, 2000) { LeftOutBins = ["4"] };
        var all = await Asked(shop, choice with { LeftOutBins = [] });
        Assert.Equal(650, all.Materials.Single(m => m.Code == "steel").AvailableKg);
        Assert.True(ChargeOptimiser.Plan(all, Soon).Lines.Single(line => line.Code == "steel").Kg > 250);

        Assert.Equal(250, (await Asked(shop, choice)).Materials.Single(m => m.Code == "steel").AvailableKg);
        Assert.DoesNotContain("steel", (await Asked(shop, choice with { LeftOutBins = ["4", "5"] })).Materials.Select(m => m.Code));

        var plan = await Shop.Do(shop.Get<PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, choice));
        var heat = await shop.Heat((await Shop.Do(shop.Get<StartHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, plan.Value.PlanId))).Value.HeatId);
        await shop.WeighIn(heat, shop.CarburiserId, 10);
        var view = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;
        var rest = RestQuestion.Answer(view, (await shop.Get<YardPage>().Load(null, Soon)).Materials, Soon)!;
        Assert.InRange(rest.Charge!.Lines.SingleOrDefault(line => line.Code == "steel")?.Kg ?? 0, 0, 250 + 1e-6);
    }

    [Fact]
    public async Task Plan_ThatAsksForWhatLiesInALeftOutBin_SaysSoAtTheField()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await Move(shop, null, "4");
        var (problem, findings) = ChargeQuestion.Build(await shop.Get<ChargePage>().Load(Soon), new(shop.FurnaceId, shop.DuctileId, 2000)
        {
            LeftOutBins = ["4"], Materials = [new("steel", MinKg: 10)],
        });

        Assert.Null(problem);
        Assert.Contains(("materials.steel.minKg", "bin.leftOut"), findings.Select(finding => (finding.Path, finding.Code)));
    }

    private static Task<Outcome<double>> Book(Shop shop, double kg, string lot, string? bin) =>
        Shop.Do(shop.Get<BookStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.SteelId, StockKind.Received, kg) { Lot = lot, Bin = bin });

    private static Task<Outcome<long>> Move(Shop shop, string? lot, string bin) =>
        Shop.Do(shop.Get<MoveLot>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.SteelId, lot, bin));

    private static async Task<MeltShop.Charging.Problems.ChargeProblem> Asked(Shop shop, ChargeChoice choice) =>
        ChargeQuestion.Build(await shop.Get<ChargePage>().Load(Soon), choice).Problem!;

    private static async Task<MaterialView> Steel(Shop shop) => (await shop.Get<YardPage>().Material(shop.SteelId, Soon))!;

    private static async Task<IEnumerable<(string, string?)>> Places(Shop shop) => (await Steel(shop)).Lots.Select(lot => (lot.Name, lot.Bin)).OrderBy(lot => lot.Name, StringComparer.Ordinal);
}
