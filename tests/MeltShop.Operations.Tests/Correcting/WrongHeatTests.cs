using MeltShop.Operations.Correcting;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Correcting;

/// <summary>A sample or a weight that was put on the wrong heat.</summary>
public sealed class WrongHeatTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Weighing_Moved_StandsOnBothHeatsAndInBothLedgers(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (first, second) = await TwoHeats(shop);
        var id = await shop.WeighIn(second, shop.SteelId, 300);
        var before = await shop.InFurnace();

        var moved = await Shop.Do(shop.Get<CorrectWeighing>(), shop.Melter, new(
            Guid.NewGuid(), shop.Now, id, first.Id, shop.SteelId, 300, false, "still on the card of the heat before"));

        var left = (await View(shop, second)).Weighings.Single(w => w.Origin.FactId == id).Origin;
        var came = (await View(shop, first)).Weighings.Single(w => w.Origin.FactId == moved.Value).Origin;
        Assert.Equal((first.Id, first.Number, true), (left.MovedTo!.Id, left.MovedTo.Number, left.IsCorrected));
        Assert.Equal((second.Id, second.Number, "still on the card of the heat before"), (came.MovedFrom!.Id, came.MovedFrom.Number, came.Reason));
        Assert.Equal(before, await shop.InFurnace(), 6); // the same furnace: the iron is in it whatever heat it is said to be of
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Sample_MovedAfterItReleasedCastings_HoldsThemAgainAndMarksTheRelease(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var first = await shop.Poured(heat, 700);
        var second = await shop.Poured(heat, 700);
        var id = await shop.Sample(heat, first, SampleKind.LastMetal, ("C", 3.4), ("Si", 2.4), ("Mg", 0.041));
        first = await shop.Treated(first.Id);
        Assert.True((await shop.Decide(shop.Inspector, first, CastingVerdict.Release, id)).Succeeded);
        shop.Clock.Advance(30);

        var moved = await Shop.Do(shop.Get<CorrectSample>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, id, heat.Id, second.Id, SampleKind.LastMetal, null, "17", null, "coins of the two ladles were swapped"));

        Assert.True(moved.Succeeded);
        first = await shop.Treated(first.Id);
        Assert.Equal((TreatedLadleState.Held, TreatedLadleState.Held), (first.State, (await shop.Treated(second.Id)).State));
        var ladle = (await View(shop, heat)).Ladles[0];
        Assert.Equal([CastingVerdict.Release, CastingVerdict.Hold], ladle.Decisions.Select(d => d.Verdict));
        Assert.Equal((StaleKind.Sample, "The metallurgist", "coins of the two ladles were swapped"), Told(Assert.Single(ladle.Decisions[0].Stale)));
        Assert.Equal((true, "coins of the two ladles were swapped", "The metallurgist"), (ladle.Decisions[1].FollowsCorrection, ladle.Decisions[1].Origin.Reason, ladle.Decisions[1].Origin.Person));
        Assert.Contains("sample.lastMetalMissing", (await shop.Decide(shop.Inspector, first, CastingVerdict.Release, moved.Value, "again")).Findings.Select(f => f.Code));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task BathSample_MovedToItsHeat_MarksCardReleaseAndPlanAndBringsBothStatesAlong(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var bath = (await View(shop, heat)).Samples[0].Id;
        var ladle = await shop.Poured(heat, 700);
        var last = await shop.Sample(heat, ladle, SampleKind.LastMetal, ("C", 3.4), ("Si", 2.4), ("Mg", 0.041));
        Assert.True((await shop.Decide(shop.Metallurgist, await shop.Treated(ladle.Id), CastingVerdict.Release, last)).Succeeded);
        await shop.Close(await shop.Heat(heat.Id));
        var next = await shop.StartHeat();
        shop.Clock.Advance(1);
        var now = shop.Now;

        var moved = await Shop.Do(shop.Get<CorrectSample>(), shop.Metallurgist, new(
            Guid.NewGuid(), now, bath, next.Id, null, SampleKind.Bath, null, null, null, "coin of the next heat", now));

        Assert.True(moved.Succeeded);

        var (left, came) = (await View(shop, heat), await View(shop, next));
        Assert.Equal((next.Number, heat.Number), (left.Samples[0].Origin.MovedTo!.Number, came.Samples[0].Origin.MovedFrom!.Number));
        Assert.Equal(StaleKind.Sample, Assert.Single(left.Ladles[0].Card!.Stale).Kind);
        Assert.Equal(StaleKind.PocketCard, Assert.Single(left.Ladles[0].Decisions[0].Stale).Kind);
        Assert.Equal((StaleKind.Heel, "The metallurgist", "coin of the next heat"), Told(Assert.Single(came.Plan.Stale)));
        Assert.Empty(left.Plan.Stale);
        Assert.Equal((HeatState.Bath, TreatedLadleState.Held), ((await shop.Heat(next.Id)).State, (await shop.Treated(ladle.Id)).State));

        // Its carbon came from that bath through the chain: now nobody knows it, and only an inspector releases with a reason.
        var again = await shop.Decide(shop.Metallurgist, await shop.Treated(ladle.Id), CastingVerdict.Release, last, "looked again");
        Assert.Contains(("window.notMeasured", "C"), again.Findings.Where(f => f.Arguments.Count > 0).Select(f => (f.Code, f.Arguments[0].ToString()!)));
    }

    [Fact]
    public async Task BathSample_MovedAway_LeavesAHeatThatIsChargingAgain()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var closed = await shop.Bath();
        await shop.Close(closed);
        var heat = await shop.StartHeat();
        var id = await shop.Sample(heat, SampleKind.Bath, ("C", 3.6), ("Si", 1.5));
        Assert.Equal(HeatState.Bath, (await shop.Heat(heat.Id)).State);

        await Shop.Do(shop.Get<CorrectSample>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, closed.Id, null, SampleKind.Bath, null, null, null, "coin of the heat before"));

        Assert.Equal(HeatState.Charging, (await shop.Heat(heat.Id)).State);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Instrument_OfASampleCorrected_HoldsWhatRestedOnItAndLeavesBothInTheRecords(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (spark, other) = (await Instrument(shop, "spark-1"), await Instrument(shop, "spark-2"));
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat, 700);
        var id = (await Shop.Do(shop.Get<RecordSample>(), shop.Melter, new(
            Guid.NewGuid(), shop.Now, heat.Id, ladle.Id, SampleKind.LastMetal, [.. Enumerable.Repeat(Shop.Burn(("C", 3.4), ("Si", 2.4), ("Mg", 0.041)), 3)], InstrumentId: spark))).Value;
        Assert.True((await shop.Decide(shop.Inspector, await shop.Treated(ladle.Id), CastingVerdict.Release, id)).Succeeded);
        CorrectSample.Command By(long? instrument) => new(
            Guid.NewGuid(), shop.Now, id, heat.Id, ladle.Id, SampleKind.LastMetal, null, null, null, "measured at the other one", InstrumentId: instrument);
        await shop.Refuses(shop.Get<CorrectSample>(), shop.Metallurgist, By(999), "instrumentId", "instrument.unknown");
        await shop.Refuses(shop.Get<CorrectSample>(), shop.Metallurgist, By(null), "", "correction.nothing");

        var right = await Shop.Do(shop.Get<CorrectSample>(), shop.Metallurgist, By(other));

        var samples = (await View(shop, heat)).Samples;
        Assert.Equal([("spark-1", true), ("spark-2", false)], samples.Where(s => s.Id == id || s.Id == right.Value).Select(s => (s.Instrument!.Code, s.Origin.IsCorrected)));
        Assert.Equal(TreatedLadleState.Held, (await shop.Treated(ladle.Id)).State);
        Assert.Equal((StaleKind.Sample, "The metallurgist", "measured at the other one"), Told(Assert.Single((await View(shop, heat)).Ladles[0].Decisions[0].Stale)));
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Fact]
    public async Task CoinNumber_Corrected_HoldsNothing()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat, 700);
        var id = await shop.Sample(heat, ladle, SampleKind.LastMetal, ("C", 3.4), ("Si", 2.4), ("Mg", 0.041));
        await shop.Decide(shop.Inspector, await shop.Treated(ladle.Id), CastingVerdict.Release, id);

        Assert.True((await Shop.Do(shop.Get<CorrectSample>(), shop.Melter, new(
            Guid.NewGuid(), shop.Now, id, heat.Id, ladle.Id, SampleKind.LastMetal, null, "18", null, "read 17 for 18"))).Succeeded);

        Assert.Equal(TreatedLadleState.Released, (await shop.Treated(ladle.Id)).State);
    }

    [Fact]
    public async Task Burn_SetAsideAfterTheRelease_HoldsTheCastingsAgain()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat, 700);
        var id = await shop.Sample(heat, ladle, SampleKind.LastMetal, ("C", 3.4), ("Si", 2.4), ("Mg", 0.041));
        await shop.Decide(shop.Inspector, await shop.Treated(ladle.Id), CastingVerdict.Release, id);

        await Shop.Do(shop.Get<SetBurnAside>(), shop.Inspector, new(Guid.NewGuid(), shop.Now, id, 2, "crack in the coin"));

        Assert.Equal(TreatedLadleState.Held, (await shop.Treated(ladle.Id)).State);
        Assert.Equal(StaleKind.Burn, Assert.Single((await View(shop, heat)).Ladles[0].Decisions[0].Stale).Kind);
    }

    private static (StaleKind, string, string?) Told(StaleNote note) => (note.Kind, note.Person, note.Reason);

    private static async Task<HeatView> View(Shop shop, Heat heat) => (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;

    private static async Task<(Heat First, Heat Second)> TwoHeats(Shop shop)
    {
        var first = await shop.Bath();
        await shop.Close(first);
        return (first, await shop.StartHeat());
    }

    private static async Task<long> Instrument(Shop shop, string code) =>
        (await Shop.Do(shop.Get<AddInstrument>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, code, code, InstrumentKind.Spark, false, []))).Value;
}
