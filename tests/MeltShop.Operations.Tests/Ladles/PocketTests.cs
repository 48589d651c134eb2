using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Ladles;

public sealed class PocketTests(OneShop one) : IClassFixture<OneShop>
{
    private readonly Shop shop = one.Shop;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    public static TheoryData<string, string, string> Refused => new()
    {
        { "mass", "plannedKg", "mass.negative" },
        { "massNaN", "plannedKg", "number.notANumber" },
        { "overfilled", "plannedKg", "ladle.overfilled" },
        { "furnace", "plannedKg", "furnace.short" },
        { "pocket", "plannedKg", "pocket.full" },
        { "temperature", "temperatureC", "temperature.outOfRange" },
        { "floor", "targetMgPercent", "magnesium.targetBelowFloor" },
        { "target", "targetMgPercent", "percent.over100" },
        { "infeasible", "targetMgPercent", "treatment.infeasible" },
        { "minutes", "minutesToLastMould", "number.negative" },
        { "alloy", "alloyMaterialId", "material.unknown" },
        { "inoculant", "inoculantMaterialId", "material.unknown" },
        { "ladle", "ladleId", "ladle.unknown" },
        { "heat", "heatId", "heat.unknown" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public Task PreparePocket_WrongInput_IsRefusedAtItsField(string what, string path, string code)
    {
        var command = shop.Pocket(one.Bath, 700);
        return shop.Refuses(shop.Get<PreparePocket>(), shop.Melter, what switch
        {
            "mass" => command with { PlannedKg = -1 },
            "massNaN" => command with { PlannedKg = double.NaN },
            "overfilled" => command with { PlannedKg = 1095 }, // 1100 kg with the alloy
            "furnace" => command with { PlannedKg = 2101 }, // 2000 kg, known to 5 %
            "pocket" => command with { PlannedKg = 900, TargetMgPercent = 0.15 },
            "temperature" => command with { TemperatureC = 900 },
            "floor" => command with { TargetMgPercent = 0.029 },
            "target" => command with { TargetMgPercent = 101 },
            "infeasible" => command with { TargetMgPercent = 10 },
            "minutes" => command with { MinutesToLastMould = -1 },
            "alloy" => command with { AlloyMaterialId = 99 },
            "inoculant" => command with { InoculantMaterialId = 99 },
            "ladle" => command with { LadleId = 99 },
            _ => command with { HeatId = 99 },
        }, path, code);
    }

    [Fact]
    public async Task Ladle_FromCardToNextFilling_IsHeldByDefault()
    {
        await using var db = shop.Db();
        var stock = await Stock(shop.AlloyId);
        var first = await shop.Prepared(one.Bath, 400);
        var card = await db.PocketCards.SingleAsync(c => c.TreatedLadleId == first.Id, Soon);
        Assert.Equal(stock - card.AlloyKg!.Value, await Stock(shop.AlloyId), 9);
        Assert.Equal(1.6, card.InoculantKg, 9); // 0.4 % of 400 kg
        Assert.Equal(0.012, card.BaseSulphurPercent!.Value, 12); // of the bath sample

        await shop.Refuses(shop.Get<PreparePocket>(), shop.Melter, shop.Pocket(one.Bath, 400), "ladleId", "ladle.busy");
        await shop.Refuses(shop.Get<EndReaction>(), shop.Melter, new(Guid.NewGuid(), shop.Now, first.Id, first.Version), "treatedLadleId", "state.wrong");
        await shop.Refuses(shop.Get<RecordTap>(), shop.Melter, new(Guid.NewGuid(), shop.Now, first.Id, Guid.NewGuid(), 400, null), "version", "version.stale");
        await shop.Refuses(shop.Get<RecordTap>(), shop.Melter, new(Guid.NewGuid(), shop.Now, first.Id, first.Version, 2200, null), "kg", "furnace.short");
        await shop.Refuses(shop.Get<RecordTap>(), shop.Melter, new(Guid.NewGuid(), shop.Now, first.Id, first.Version, 0, null), "kg", "mass.zero");
        await shop.Refuses(
            shop.Get<RecordSample>(), shop.Melter,
            new(Guid.NewGuid(), shop.Now, one.Bath.Id, first.Id, SampleKind.LastMetal, [Shop.Burn(("Mg", 0.04))]), "treatedLadleId", "state.wrong");

        var inoculant = await Stock(shop.InoculantId);
        var tapped = await Shop.Do(shop.Get<RecordTap>(), shop.Melter, new(Guid.NewGuid(), shop.Now, first.Id, first.Version, 410, null));
        Assert.Equal(1.64, tapped.Value.InoculantKg, 9);
        Assert.Equal(inoculant - 1.64, await Stock(shop.InoculantId), 9);
        Assert.Equal((tapped.Value.MgAfterTreatmentPercent!.Value - 0.03) / 0.001, tapped.Value.MinutesToFloor!.Value, 6); // linear, 0.001 % a minute

        first = await shop.Treated(first.Id);
        await shop.Refuses(
            shop.Get<EndReaction>(), shop.Melter, new(Guid.NewGuid(), shop.Now.AddMinutes(-1), first.Id, first.Version), "observedAt", "time.beforeTap");
        var ended = shop.Now;
        await Shop.Do(shop.Get<EndReaction>(), shop.Melter, new(Guid.NewGuid(), ended, first.Id, first.Version));
        first = await shop.Treated(first.Id);
        Assert.Equal((TreatedLadleState.Pouring, ended), (first.State, first.ReactionEndedAt));

        var second = await shop.Prepared(one.Bath, 400); // the same ladle again: it has been poured out
        Assert.Equal(TreatedLadleState.Held, (await shop.Treated(first.Id)).State);
        Assert.Equal(2, second.Ordinal);
        await Shop.Do(shop.Get<AbandonPocket>(), shop.Melter, new(Guid.NewGuid(), shop.Now, second.Id, second.Version, "skull in the ladle"));
    }

    private async Task<double> Stock(long materialId)
    {
        await using var db = shop.Db();
        return (await db.Materials.SingleAsync(m => m.Id == materialId, Soon)).StockKg!.Value;
    }
}
