using MeltShop.Operations.Charging;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Tests.Heats;

/// <summary>Heats whose only bath sample turned out to be another one's: what went into their bath is in all the same.</summary>
public sealed class MovedCoinTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Rest_OfAHeatThatIsChargingAgain_ReckonsWithWhatWentIntoTheBath()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var closed = await shop.Bath();
        await shop.Close(closed, await shop.InFurnace());
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 200);
        shop.Clock.Advance(60);
        var coin = await shop.Sample(heat, SampleKind.Bath, ("C", 3.65), ("Si", 1.5));
        await shop.WeighIn(heat, shop.PigIronId, 2500, intoBath: true);
        await MoveAway(shop, coin, closed);

        var view = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;
        var rest = RestQuestion.Answer(view, (await shop.Get<YardPage>().Load(null, Soon)).Materials, Soon)!;

        Assert.Equal(HeatState.Charging, view.Heat.State);
        Assert.Equal(2500, rest.Lines!.Single(line => line.Code == "pig").Kg, 6);
    }

    /// <summary>The rest is planned from what the ledger says is there: of 10 kg of a carburiser 7.55 kg arrive late, and 9.02 kg with the charge.</summary>
    [Fact]
    public async Task Rest_OfAHeatThatIsChargingAgain_HasOfWhatWentIntoTheBathWhatTheLedgerHas()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var closed = await shop.Bath();
        await shop.Close(closed, await shop.InFurnace());
        var coke = (await Shop.Do(shop.Get<AddMaterial>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, "coke", "coke", MaterialKind.Carburiser, MaterialUses.Charge | MaterialUses.BathAddition, 700, 100, [new("C", 98, null, 90, 75)], "invented for a test", "memory"))).Value;
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 200);
        shop.Clock.Advance(60);
        var coin = await shop.Sample(heat, SampleKind.Bath, ("C", 3.65), ("Si", 1.5));
        await shop.WeighIn(heat, coke, 10, intoBath: true);
        await MoveAway(shop, coin, closed);

        var view = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;
        var rest = RestQuestion.Answer(view, (await shop.Get<YardPage>().Load(null, Soon)).Materials, Soon)!;

        Assert.Equal(194 + 7.55, view.Heat.LiquidKg, 6);
        Assert.Equal(view.Heat.LiquidKg, rest.AsItIs!.LiquidKg!.Value, 6);
        Assert.Equal(10, rest.Lines!.Single(line => line.Code == "coke").Kg, 6);
    }

    [Fact]
    public async Task FirstPlan_OfAHeatThatIsChargingAgain_DoesNotStandOnceSomethingElseWentIntoTheBath()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var closed = await shop.Bath();
        await shop.Close(closed, await shop.InFurnace());
        var heat = await shop.StartHeat();
        shop.Clock.Advance(60);
        var coin = await shop.Sample(heat, SampleKind.Bath, ("C", 3.65), ("Si", 1.5));
        Assert.True(FirstPlan.StillStands((await shop.Get<HeatPage>().Load(heat.Id, Soon))!));
        await shop.WeighIn(heat, shop.InoculantId, 1, intoBath: true);
        await MoveAway(shop, coin, closed);

        var view = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;

        Assert.Equal((HeatState.Charging, 1), (view.Heat.State, view.Weighings.Count));
        Assert.False(FirstPlan.StillStands(view));
    }

    /// <summary>Known by when the heat came out of charging: that its coin was not its own says nothing of that.</summary>
    [Theory]
    [InlineData(90, false)]
    [InlineData(10, true)]
    public async Task Weight_ThatComesLateWhereNoCoinIsLeft_GoesWhereItsTimeSays(int minutesAgo, bool intoBath)
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var closed = await shop.Bath();
        await shop.Close(closed, await shop.InFurnace());
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 1500);
        shop.Clock.Advance(120);
        var coin = await shop.Sample(heat, SampleKind.Bath, ("C", 3.65), ("Si", 1.5), ("Mn", 0.3), ("S", 0.012));
        await shop.Poured(await shop.Heat(heat.Id), 700);
        shop.Clock.Advance(60);
        await MoveAway(shop, coin, closed);

        Assert.True((await Shop.Do(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), shop.Now.AddMinutes(-minutesAgo), heat.Id, shop.SteelId, 20, null))).Succeeded);

        var view = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;
        Assert.Equal((HeatState.Tapping, intoBath), (view.Heat.State, view.Weighings.Single(weighing => weighing.Kg == 20).IntoBath));
    }

    private static async Task MoveAway(Shop shop, long coin, Heat to) => Assert.True((await Shop.Do(shop.Get<CorrectSample>(), shop.Melter, new(
        Guid.NewGuid(), shop.Now, coin, to.Id, null, SampleKind.Bath, null, null, null, "coin of the heat before"))).Succeeded);
}
