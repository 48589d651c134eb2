using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Ladles;

/// <summary>From the end of the reaction to the last mould and the rest of the ladle, on both databases.</summary>
public sealed class PouringTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Moulds_InTimeAndAfterTheMagnesium_TheLateOneIsHeldAtOnceWithTheReason(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var ladle = await shop.Poured(await shop.Bath());
        var minutes = await Minutes(shop, ladle);

        var first = await shop.Mould(ladle, "1", 200);
        shop.Clock.Advance(minutes + 1);
        var late = await shop.Mould(ladle, "2", 200);

        Assert.Equal((null, 700.0), (first.Value.LateFor, first.Value.LeftKg));
        Assert.Equal(PouringLimitKind.Magnesium, late.Value.LateFor);
        Assert.Equal(ladle.ReactionEndedAt!.Value.AddMinutes(minutes), late.Value.StopAt!.Value, TimeSpan.FromMilliseconds(1));
        await using var db = shop.Db();
        var rows = await db.PouredMoulds.OrderBy(m => m.Id).ToListAsync(Soon);
        Assert.Equal([null, PouringLimitKind.Magnesium], rows.Select(m => m.LateFor));
        Assert.Equal(TimeSpan.FromSeconds(20), rows[0].ObservedAt - rows[0].FirstAt);
        Assert.NotEqual(ladle.Version, (await shop.Treated(ladle.Id)).Version); // a decision from the page of before is told so
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Mould_LateAfterARelease_HoldsTheCastingsAgain(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat);
        var sampleId = await shop.Sample(heat, ladle, SampleKind.LastMetal, ("C", 3.3), ("Si", 2.4), ("Mg", 0.041));
        Assert.True((await shop.Decide(shop.Inspector, await shop.Treated(ladle.Id), CastingVerdict.Release, sampleId)).Succeeded);
        shop.Clock.Advance(60);

        await shop.Mould(ladle, "17", 100);

        ladle = await shop.Treated(ladle.Id);
        Assert.Equal(TreatedLadleState.Held, ladle.State);
        await shop.Refuses(
            shop.Get<DecideCastings>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, ladle.Id, ladle.Version, CastingVerdict.Release, sampleId, "seen"),
            "sampleId", "mould.late");
        Assert.True((await shop.Decide(shop.Inspector, ladle, CastingVerdict.Release, sampleId, "mould 17 broken up, nodularity seen")).Succeeded);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Rest_PiggedPouredBackAndIntoAnotherLadle_LeavesMassAndMagnesiumWhereTheyWent(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat, 900);
        var other = await shop.Poured(heat, 500, ladleId: await shop.SecondLadle());
        var furnace = await shop.InFurnace();
        await shop.Mould(ladle, "1", 500);
        var fade = new Fade.Linear(0.001);
        await using var db = shop.Db();
        var at = shop.Now;
        double Now(Tap tap, TreatedLadle of) => fade.After(tap.MgAfterTreatmentPercent!.Value, (at - of.ReactionEndedAt!.Value).TotalMinutes);
        var (mine, theirs) = (await TapOf(db, ladle), await TapOf(db, other));

        var pigged = await Shop.Do(shop.Get<RecordRest>(), shop.Melter, new(Guid.NewGuid(), at, ladle.Id, RestWay.Pigged, null, 100, null));
        var over = await Shop.Do(shop.Get<RecordRest>(), shop.Melter, new(Guid.NewGuid(), at, ladle.Id, RestWay.IntoLadle, other.Id, 150, null));
        var back = await Shop.Do(shop.Get<RecordRest>(), shop.Melter, new(Guid.NewGuid(), at, ladle.Id, RestWay.PouredBack, heat.Id, 100, "mould broken"));

        Assert.Equal((300.0, 150.0, 50.0), (pigged.Value, over.Value, back.Value));
        Assert.Equal(furnace + 100, await shop.InFurnace(), 6);
        var line = await db.FurnaceMetals.Include(m => m.Percents).SingleAsync(m => m.Kind == FurnaceMetalKind.PouredBack, Soon);
        Assert.Contains(line.Percents, p => p.Element == Metallurgy.Elements.Element.Mg && p.Percent > 0.03);
        var mixed = await db.LadleRests.SingleAsync(r => r.IntoLadleId == other.Id, Soon);
        // By hand: 500 kg at its own magnesium and 150 kg that lost 0.010 % by re-ladling.
        var expected = (500 * Now(theirs, other) + 150 * (Now(mine, ladle) - 0.010)) / 650;
        Assert.Equal(expected, mixed.MixedMgPercent!.Value, 6);
        Assert.Equal((expected - 0.03) / 0.001, mixed.MinutesToFloor!.Value, 3);
        await shop.Refuses(
            shop.Get<RecordRest>(), shop.Melter, new(Guid.NewGuid(), shop.Now, ladle.Id, RestWay.Pigged, null, 200, null), "kg", "ladle.short");
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task TakeBack_OfAMouldAndAnInoculation_LeavesThemReadableAndCountsThemNoMore(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var ladle = await shop.Poured(await shop.Bath());
        var mould = await shop.Mould(ladle, "1", 200);
        await using var db = shop.Db();
        var stock = await Stock(shop);
        var inoculation = await Shop.Do(shop.Get<RecordInoculation>(), shop.Melter, new(
            Guid.NewGuid(), shop.Now, ladle.Id, InoculationPlace.Stream, shop.InoculantId, 0.9));
        Assert.Equal(stock - 0.9, await Stock(shop), 9);

        await shop.Refuses(shop.Get<TakeBack>(), shop.Melter, new(Guid.NewGuid(), shop.Now, LadleEntryKind.Mould, mould.Value.MouldId, ""), "reason", "text.missing");
        await Shop.Do(shop.Get<TakeBack>(), shop.Melter, new(Guid.NewGuid(), shop.Now, LadleEntryKind.Mould, mould.Value.MouldId, "not poured"));
        await Shop.Do(shop.Get<TakeBack>(), shop.Melter, new(Guid.NewGuid(), shop.Now, LadleEntryKind.Inoculation, inoculation.Value, "hopper was shut"));

        Assert.Equal(stock, await Stock(shop), 9);
        Assert.Equal(2, await db.PouredMoulds.CountAsync(Soon));
        Assert.Empty(await db.InForce<PouredMould>().Where(m => !m.IsWithdrawn).ToListAsync(Soon));
        await shop.Refuses(
            shop.Get<TakeBack>(), shop.Melter, new(Guid.NewGuid(), shop.Now, LadleEntryKind.Mould, mould.Value.MouldId, "again"), "factId", "fact.corrected");
        Assert.Equal(700, (await shop.Mould(ladle, "1", 200)).Value.LeftKg, 9); // its label is free again
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Clocks_ByTwoPeopleAtOneLadle_CountFromWhatEachEntered(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var ladle = await shop.Poured(await shop.Bath());
        var seen = ladle.Version;
        await Task.WhenAll(
            shop.Get<RecordMould>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, ladle.Id, "A", 100, 20), Soon),
            shop.Get<RecordMould>().Run(shop.Metallurgist, new(Guid.NewGuid(), shop.Now, ladle.Id, "B", 100, 20), Soon));
        await using var db = shop.Db();
        Assert.Equal(["A", "B"], await db.PouredMoulds.OrderBy(m => m.Label).Select(m => m.Label).ToListAsync(Soon));

        await Shop.Do(shop.Get<UndoReaction>(), shop.Melter, new(Guid.NewGuid(), shop.Now, ladle.Id, seen, "pressed at the wrong ladle"));

        ladle = await shop.Treated(ladle.Id);
        Assert.Equal((TreatedLadleState.Tapped, null), (ladle.State, ladle.ReactionEndedAt));
        await shop.Refuses(shop.Get<EndReaction>(), shop.Melter, new(Guid.NewGuid(), shop.Now, ladle.Id, seen), "version", "version.stale");
        await shop.Refuses(shop.Get<UndoReaction>(), shop.Melter, new(Guid.NewGuid(), shop.Now, ladle.Id, ladle.Version, "twice"), "treatedLadleId", "state.wrong");
        Assert.True((await shop.Mould(ladle, "C", 100)).Succeeded); // the moulds wait for nobody's press
        await shop.Refuses(shop.Get<EndReaction>(), shop.Melter, new(Guid.NewGuid(), shop.Now, ladle.Id, ladle.Version), "observedAt", "reaction.afterMould");
        Assert.Equal("pressed at the wrong ladle", (await db.LadleSteps.OrderBy(s => s.Id).LastAsync(Soon)).Reason);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Mould_InTimeByAClockThatWasPutRightLater_IsNotReleasedLikeTheOthers(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat); // the reaction was said to end two minutes after the tap
        var ended = ladle.ReactionEndedAt!.Value;
        shop.Clock.Advance(await Minutes(shop, ladle) - 1);
        Assert.Null((await shop.Mould(ladle, "1", 200)).Value.LateFor);
        await Shop.Do(shop.Get<UndoReaction>(), shop.Melter, new(Guid.NewGuid(), shop.Now, ladle.Id, ladle.Version, "pressed two minutes late"));
        ladle = await shop.Treated(ladle.Id);
        await Shop.Do(shop.Get<EndReaction>(), shop.Melter, new(Guid.NewGuid(), ended.AddMinutes(-1.9), ladle.Id, ladle.Version));
        var sampleId = await shop.Sample(heat, ladle, SampleKind.LastMetal, ("C", 3.3), ("Si", 2.4), ("Mg", 0.041));
        ladle = await shop.Treated(ladle.Id);

        await shop.Refuses(
            shop.Get<DecideCastings>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, ladle.Id, ladle.Version, CastingVerdict.Release, sampleId, "seen"),
            "sampleId", "mould.late");
    }

    [Fact]
    public async Task Mould_WrongInput_IsRefusedAtItsField()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        var prepared = await shop.Prepared(heat);
        RecordMould.Command Command(long id) => new(Guid.NewGuid(), shop.Now, id, "1", 100, 20);
        await shop.Refuses(shop.Get<RecordMould>(), shop.Melter, Command(prepared.Id), "treatedLadleId", "state.wrong");
        await shop.Refuses(shop.Get<RecordMould>(), shop.Melter, Command(99), "treatedLadleId", "ladle.unknown");
        var ladle = await shop.Poured(heat, 900, ladleId: await shop.SecondLadle());
        await shop.Refuses(shop.Get<RecordMould>(), shop.Melter, Command(ladle.Id) with { Kg = 0 }, "kg", "mass.zero");
        await shop.Refuses(shop.Get<RecordMould>(), shop.Melter, Command(ladle.Id) with { Kg = 946 }, "kg", "ladle.short"); // 900 kg, known to 5 %
        await shop.Refuses(shop.Get<RecordMould>(), shop.Melter, Command(ladle.Id) with { Label = " " }, "label", "text.missing");
        await shop.Refuses(shop.Get<RecordMould>(), shop.Melter, Command(ladle.Id) with { PourSeconds = -1 }, "pourSeconds", "number.negative");
        await shop.Refuses(shop.Get<RecordMould>(), shop.Melter, Command(ladle.Id) with { ObservedAt = shop.Now.AddHours(-1) }, "observedAt", "time.beforeTap");
        await shop.Mould(ladle, "1", 100);
        await shop.Refuses(shop.Get<RecordMould>(), shop.Melter, Command(ladle.Id), "label", "mould.known");
        await shop.Refuses(shop.Get<RecordMould>(), shop.Inspector, Command(ladle.Id), "", "right.missing");
    }

    private static async Task<double> Minutes(Shop shop, TreatedLadle ladle)
    {
        await using var db = shop.Db();
        return (await TapOf(db, ladle)).MinutesToFloor!.Value;
    }

    private static Task<Tap> TapOf(RecordsContext db, TreatedLadle ladle) => db.Taps.SingleAsync(t => t.TreatedLadleId == ladle.Id, Soon);

    private static async Task<double> Stock(Shop shop)
    {
        await using var db = shop.Db();
        return (await db.Materials.SingleAsync(m => m.Id == shop.InoculantId, Soon)).StockKg!.Value;
    }
}
