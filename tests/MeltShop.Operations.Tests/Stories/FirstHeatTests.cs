using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Storing;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Tests.Stories;

public sealed class FirstHeatTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Heat_FromPlanToNextHeel_LeavesItsMetalWithTheAnalysis(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);

        var heat = await shop.StartHeat();
        Assert.Equal("TB-2026-0001", heat.Number);
        Assert.Equal(HeatState.Charging, heat.State);

        await shop.WeighIn(heat, shop.PigIronId, 1500); // arrives at 98 %: 1470 kg
        await shop.WeighIn(heat, shop.SteelId, 500); // 97 %: 485 kg
        Assert.Equal(1955, await shop.InFurnace(), 6);

        shop.Clock.Advance(60);
        await shop.Sample(heat, SampleKind.Bath, ("C", 3.65), ("Si", 1.5), ("Mn", 0.3), ("S", 0.012));
        heat = await shop.Heat(heat.Id);
        Assert.Equal(HeatState.Bath, heat.State);

        var ladle = await shop.Poured(heat, plannedKg: 900, tappedKg: 920);
        Assert.Equal(TreatedLadleState.Pouring, ladle.State);
        Assert.Equal(HeatState.Tapping, (await shop.Heat(heat.Id)).State);
        Assert.Equal(1035, await shop.InFurnace(), 6);

        shop.Clock.Advance(8);
        var sampleId = await shop.Sample(heat, ladle, SampleKind.LastMetal, ("C", 3.1), ("Si", 2.4), ("Mg", 0.041));
        ladle = await shop.Treated(ladle.Id);
        Assert.Equal(TreatedLadleState.Held, ladle.State);

        Assert.True((await shop.Decide(shop.Inspector, ladle, CastingVerdict.Release, sampleId)).Succeeded);
        Assert.Equal(TreatedLadleState.Released, (await shop.Treated(ladle.Id)).State);

        var closed = await shop.Close(await shop.Heat(heat.Id), piggedKg: 35);
        Assert.Equal(1000, closed.Value.HeelKg, 6);
        Assert.Equal(3.65, closed.Value.Analysis["C"], 9);

        var furnace = Assert.Single((await shop.Get<ChargePage>().Load(Soon)).Furnaces);
        Assert.Equal(1000, furnace.LiquidKg, 6);
        Assert.Equal(1.5, furnace.Heel!.Analysis[Element.Si]!.Value, 9);

        var next = await Shop.Do(shop.Get<PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, new ChargeChoice(shop.FurnaceId, shop.DuctileId, 2500)));
        await using var db = shop.Db();
        var problem = StoredJson.Value<ChargeProblem>((await db.Plans.FindAsync([next.Value.PlanId], Soon))!.Problem);
        Assert.Equal(1000, problem.Heel.Kg, 6);
        Assert.Equal(3.65, problem.Heel.Percent(Element.C), 9);
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [InlineData(800)]
    [InlineData(1000)]
    public async Task Tap_OverOrUnder_MovesTheMagnesiumAndNeverTheAlloy(double tappedKg)
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat, plannedKg: 900, tappedKg);

        await using var db = shop.Db();
        var card = Assert.Single(db.PocketCards);
        var tap = Assert.Single(db.Taps);
        var planned = StoredJson.Value<StoredTreatment>(card.Answer!);
        Assert.Equal(planned.AlloyKg, card.AlloyKg);
        Assert.Equal(tappedKg < 900, tap.MgAfterTreatmentPercent > planned.MgAfterTreatmentPercent);

        // The alloy binds 0.7581 kg of magnesium a kilogram of sulphur, the rest stays: close to in proportion to the mass tapped.
        var boundPercent = 24.305 / 32.06 * (0.012 - 0.006);
        var inProportion = (planned.MgAfterTreatmentPercent + boundPercent) * 900 / tappedKg - boundPercent;
        Assert.Equal(inProportion, tap.MgAfterTreatmentPercent!.Value, 0.0003);
        Assert.Equal(TreatedLadleState.Pouring, ladle.State);
    }

    [Fact]
    public async Task Pocket_StopWeight_KeepsTheFloorAtTheLastMould()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        await shop.Prepared(heat, plannedKg: 700);

        await using var db = shop.Db();
        var card = Assert.Single(db.PocketCards);
        var problem = StoredJson.Value<Metallurgy.Treatment.TreatmentProblem>(card.Problem!);
        var atStop = PocketQuestion.AfterTap(problem, card.AlloyKg!.Value, card.StopWeightKg, null);

        Assert.InRange(card.StopWeightKg, 701, 1099);
        Assert.Equal(0.03, atStop.MgPercentAt(8), 6);
    }
}
