using MeltShop.Operations.Ladles;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Ladles;

public sealed class PocketStateTests : IAsyncLifetime
{
    private Shop shop = null!;

    public async ValueTask InitializeAsync() => shop = await Shop.Open(RecordsProvider.Sqlite);

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task PreparePocket_NoBathSample_IsRefused()
    {
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.PigIronId, 1000);

        await shop.Refuses(shop.Get<PreparePocket>(), shop.Melter, shop.Pocket(heat, 500), "heatId", "heat.noBathSample");
    }

    [Fact]
    public async Task PreparePocket_SulphurNotMeasured_AsksForItAndTakesIt()
    {
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.PigIronId, 1000);
        await shop.Sample(heat, SampleKind.Bath, ("C", 3.65), ("Si", 1.5));

        await shop.Refuses(shop.Get<PreparePocket>(), shop.Melter, shop.Pocket(heat, 500), "baseSulphurPercent", "sulphur.missing");
        var prepared = await Shop.Do(shop.Get<PreparePocket>(), shop.Melter, shop.Pocket(heat, 500) with { BaseSulphurPercent = 0.015 });
        Assert.True(prepared.Succeeded);
    }

    [Fact]
    public async Task PreparePocket_MagnesiumInTheBath_IsRefused()
    {
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.PigIronId, 1000);
        await shop.Sample(heat, SampleKind.Bath, ("C", 3.65), ("Si", 1.5), ("S", 0.01), ("Mg", 0.02));

        await shop.Refuses(shop.Get<PreparePocket>(), shop.Melter, shop.Pocket(heat, 500), "heatId", "base.magnesium");
    }

    [Fact]
    public async Task GreyIron_WithoutTreatment_PoursAtOnceAndIsReleasedByItsSample()
    {
        var heat = await shop.Bath(shop.GreyId);
        await shop.Refuses(
            shop.Get<PreparePocket>(), shop.Melter, shop.Pocket(heat, 800) with { TargetMgPercent = 0.04 }, "targetMgPercent", "magnesium.inGreyIron");
        var ladle = await shop.Poured(heat, 800);

        Assert.Equal((TreatedLadleState.Pouring, null), (ladle.State, ladle.ReactionEndedAt));
        await using var db = shop.Db();
        var card = await db.PocketCards.SingleAsync(TestContext.Current.CancellationToken);
        Assert.Equal((null, null, 1100.0), (card.AlloyKg, card.MgFloorPercent, card.StopWeightKg));
        var sampleId = await shop.Sample(heat, ladle, SampleKind.LastMetal, ("C", 3.3), ("Si", 1.9));
        Assert.True((await shop.Decide(shop.Metallurgist, await shop.Treated(ladle.Id), CastingVerdict.Release, sampleId)).Succeeded);
    }
}
