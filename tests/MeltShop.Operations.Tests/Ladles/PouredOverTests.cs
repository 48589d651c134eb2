using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Pouring;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Reading.Recall;
using MeltShop.Records.Sites;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Ladles;

/// <summary>A pouring furnace that is filled and topped up from ladles while its iron fades, on both databases.</summary>
public sealed class PouredOverTests
{
    private const double Fade = 0.0005;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task PouringFurnace_FilledAndToppedUp_IsTheBathOfTheCalculation(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var first = await shop.Poured(heat, 900);
        var furnace = await shop.InFurnace();
        var sample = await shop.Sample(heat, first, SampleKind.AfterTreatment, ("Mg", 0.044));
        shop.Clock.Advance(2);
        var filledAt = shop.Now;
        Assert.Equal(100, (await Over(shop, first, RestWay.IntoEmpty, await Vessel(shop), 800)).Value);
        var bath = await Filling(shop, "PF");
        shop.Clock.Advance(3);
        await shop.Mould(bath, "1", 400);
        var second = await shop.Poured(heat, 500, ladleId: await shop.SecondLadle());
        var toppedAt = shop.Now;
        await Over(shop, second, RestWay.IntoLadle, bath.Id, 300);

        await using var db = shop.Db();
        var rests = await db.LadleRests.OrderBy(r => r.Id).ToListAsync(Soon);
        var minutes = (rests[1].ObservedAt - rests[0].ObservedAt).TotalMinutes;
        var expected = new PouringBath(800, rests[0].MixedMgPercent!.Value, new Fade.Linear(Fade), 400 / minutes, 0.03)
            .Follow([new TopUp(minutes, 300, rests[1].CameMgPercent!.Value)])[1];
        Assert.Equal(rests[0].CameMgPercent!.Value - 0.010, rests[0].MixedMgPercent!.Value, 9); // the most that being poured over costs
        Assert.Equal(expected.MgAfter, rests[1].MixedMgPercent!.Value, 9);
        Assert.InRange(rests[1].MixedMgPercent!.Value, rests[1].MixedMgLeastPercent!.Value, rests[1].MixedMgMostPercent!.Value);
        Assert.Equal(rests[1].MixedMgLeastPercent > 0.03, rests[1].LeastMinutesToFloor is not null); // from under the floor it has no time left
        // By hand: the ends of the first ladle's own band, faded at 0.001 % a minute, less the most and the least that is printed for pouring over.
        var tap = await db.Taps.SingleAsync(t => t.TreatedLadleId == first.Id, Soon);
        var faded = 0.001 * (filledAt - first.ReactionEndedAt!.Value).TotalMinutes;
        Assert.Equal(tap.MgLeastPercent!.Value - faded - 0.010, rests[0].MixedMgLeastPercent!.Value, 9);
        Assert.Equal(tap.MgMostPercent!.Value - faded - 0.007, rests[0].MixedMgMostPercent!.Value, 9);
        Assert.Equal((expected.MgAfter - 0.03) / Fade, rests[1].MinutesToFloor!.Value, 6);
        Assert.Equal((sample, null), (rests[0].SampleId, rests[1].SampleId));
        var times = await LadleTimesRows.One(db, bath.Id, null, Soon);
        Assert.Equal((rests[1].ObservedAt, rests[1].MixedMgPercent), (times.MgChangedAt, times.MgPercent));
        Assert.Equal((rests[1].MixedMgLeastPercent, rests[1].MixedMgMostPercent), (times.MgLeastPercent, times.MgMostPercent));
        // Its inoculation is as old as that of the oldest iron, which was inoculated in the first ladle's tap.
        Assert.Equal(await db.Taps.Where(t => t.TreatedLadleId == first.Id).Select(t => t.ObservedAt).SingleAsync(Soon), times.InoculatedAt);
        Assert.True(filledAt < toppedAt);
        Assert.Equal(furnace - 500, await shop.InFurnace(), 6); // what is poured over is tapped of no furnace
        var view = (await shop.Get<LadlePage>().Load(bath.Id, Soon))!;
        Assert.Equal((1100.0, 400.0), (view.Treated!.InKg, view.Pouring!.OutKg));
        Assert.Equal([(1, 800.0), (3, 300.0)], view.Pouring.Came.Select(c => (c.FromOrdinal, c.Kg)));
        var recall = await shop.Get<RecallPage>().Load(new(RecallFrom.Ladle, $"{heat.Number}/3"), Soon);
        Assert.Equal([2, 3], recall.Rows.Select(r => r.Ladle.Ordinal));
    }

    [Fact]
    public async Task PouringFurnace_ItsCastings_AreJudgedByTheirOwnSampleWithTheCarbonOfTheChain()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat, 900);
        await Over(shop, ladle, RestWay.IntoEmpty, await Vessel(shop), 800);
        var bath = await Filling(shop, "PF");
        var sample = await shop.Sample(heat, bath, SampleKind.LastMetal, ("C", 3.3), ("Si", 2.4), ("Mg", 0.036));

        var carbon = (await shop.Get<LadleForecast>().LastMetal(bath.Id, sample, Soon)).Single(v => v.Quantity == Element.C.Symbol);
        var ofTheLadle = await shop.Sample(heat, ladle, SampleKind.LastMetal, ("C", 3.3), ("Si", 2.4), ("Mg", 0.04));
        var same = (await shop.Get<LadleForecast>().LastMetal(ladle.Id, ofTheLadle, Soon)).Single(v => v.Quantity == Element.C.Symbol);

        Assert.Equal(WindowStanding.Inside, carbon.Standing);
        Assert.Equal(same.Value!.Value, carbon.Value!.Value, 9);
        Assert.True((await shop.Decide(shop.Inspector, await shop.Treated(bath.Id), CastingVerdict.Release, sample)).Succeeded);
        Assert.Equal(TreatedLadleState.Held, (await shop.Treated(ladle.Id)).State); // the ladle that it came from is decided by itself
    }

    [Fact]
    public async Task PouringFurnace_AsALadle_IsNeitherPreparedNorUndone()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var (heat, vessel) = (await shop.Bath(), await Vessel(shop));
        await shop.Refuses(shop.Get<PreparePocket>(), shop.Melter, shop.Pocket(heat, 500) with { LadleId = vessel }, "ladleId", "ladle.filledFromLadles");
        var ladle = await shop.Poured(heat, 900);
        var prepared = await shop.SecondLadle();
        await shop.Prepared(heat, 300, prepared);
        await shop.Refuses(shop.Get<RecordRest>(), shop.Melter, Rest(shop, ladle, RestWay.IntoEmpty, prepared, 100), "vesselId", "ladle.busy");
        await shop.Refuses(shop.Get<RecordRest>(), shop.Melter, Rest(shop, ladle, RestWay.IntoEmpty, shop.LadleId, 100), "vesselId", "ladle.busy");

        await Use(shop, vessel, false);
        await shop.Refuses(shop.Get<RecordRest>(), shop.Melter, Rest(shop, ladle, RestWay.IntoEmpty, vessel, 400), "vesselId", "ladle.outOfUse");
        await Use(shop, vessel, true);

        await Over(shop, ladle, RestWay.IntoEmpty, vessel, 400);
        var bath = await Filling(shop, "PF");
        await shop.Refuses(shop.Get<UndoReaction>(), shop.Melter, new(Guid.NewGuid(), shop.Now, bath.Id, bath.Version, "no"), "treatedLadleId", "correction.elsewhere");
        // What is left in it by the scales would mix with what comes: it is not empty.
        await shop.Refuses(shop.Get<RecordRest>(), shop.Melter, Rest(shop, ladle, RestWay.IntoEmpty, vessel, 200), "vesselId", "ladle.notEmpty");
        await shop.Mould(bath, "1", 390); // the last 10 kg are within what a poured mass may be off
        await Over(shop, ladle, RestWay.IntoEmpty, vessel, 200); // emptied, and filled anew
        Assert.Equal((TreatedLadleState.Held, TreatedLadleState.Pouring), ((await shop.Treated(bath.Id)).State, (await Filling(shop, "PF")).State));
    }

    [Fact]
    public async Task PouringFurnace_OverItsBrim_IsRefusedAndOverItsFillLimitIsNot()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        var vessel = await Vessel(shop, fillLimitKg: 700, capacityKg: 850);
        var ladle = await shop.Poured(heat, 900);
        await shop.Refuses(shop.Get<RecordRest>(), shop.Melter, Rest(shop, ladle, RestWay.IntoEmpty, vessel, 860), "kg", "ladle.overBrim");

        await Over(shop, ladle, RestWay.IntoEmpty, vessel, 800); // it happened: the page warns, as it does of a ladle tapped over its stop weight

        var bath = await Filling(shop, "PF");
        var view = (await shop.Get<LadlePage>().Load(bath.Id, Soon))!;
        Assert.Equal((800.0, 700.0), (view.Treated!.InKg, view.Treated.FillLimitKg));
        await shop.Refuses(shop.Get<RecordRest>(), shop.Melter, Rest(shop, ladle, RestWay.IntoLadle, bath.Id, 95), "kg", "ladle.overBrim");
    }

    private static async Task Use(Shop shop, long vessel, bool isActive)
    {
        await using var db = shop.Db();
        var version = await db.Ladles.Where(l => l.Id == vessel).Select(l => l.Version).SingleAsync(Soon);
        Assert.True((await Shop.Do(shop.Get<UseLadle>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, vessel, version, isActive))).Succeeded);
    }

    private static async Task<long> Vessel(Shop shop, double fillLimitKg, double capacityKg)
    {
        var id = await Vessel(shop);
        await using var db = shop.Db();
        foreach (var (kind, kg) in new[] { (LadleFigureKind.FillLimit, fillLimitKg), (LadleFigureKind.Capacity, capacityKg) })
        {
            var version = await db.Ladles.Where(l => l.Id == id).Select(l => l.Version).SingleAsync(Soon);
            await Shop.Do(shop.Get<SetLadleFigure>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, id, version, kind, kg, null, null, FigureStanding.Shop, "invented for a test"));
        }

        return id;
    }

    private static async Task<long> Vessel(Shop shop) => (await Shop.Do(shop.Get<AddLadle>(), shop.Administrator, new(
        Guid.NewGuid(), shop.Now, "PF", "Pouring furnace", "pouringFurnace", 2000, 0, 0, null, Fade, 1, "invented for a test"))).Value;

    private static RecordRest.Command Rest(Shop shop, TreatedLadle from, RestWay way, long into, double kg) => new(Guid.NewGuid(), shop.Now, from.Id, way, into, kg, null);

    private static Task<Outcome<double>> Over(Shop shop, TreatedLadle from, RestWay way, long into, double kg) =>
        Shop.Do(shop.Get<RecordRest>(), shop.Melter, Rest(shop, from, way, into, kg));

    private static async Task<TreatedLadle> Filling(Shop shop, string code)
    {
        await using var db = shop.Db();
        return await db.TreatedLadles.AsNoTracking().Where(l => db.Ladles.Any(x => x.Id == l.LadleId && x.Code == code)).OrderBy(l => l.Id).LastAsync(Soon);
    }
}
