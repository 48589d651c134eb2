using MeltShop.Operations.Correcting;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Ladles;

/// <summary>A ladle came back low whose iron went on: what was poured with it is held like its own castings.</summary>
public sealed class LowSourceTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task PouringFurnace_ASourceComesBackLow_ItsReleasedCastingsAreHeldAgainWithTheReason(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (heat, first, second, bath) = await Topped(shop);
        var good = await shop.Sample(heat, bath, SampleKind.LastMetal, ("C", 3.3), ("Si", 2.4), ("Mg", 0.041));
        Assert.True((await shop.Decide(shop.Metallurgist, await shop.Treated(bath.Id), CastingVerdict.Release, good)).Succeeded);

        await shop.Sample(heat, second, SampleKind.LastMetal, ("Si", 2.4), ("Mg", 0.021));

        Assert.Equal(TreatedLadleState.Held, (await shop.Treated(bath.Id)).State);
        await using var db = shop.Db();
        var hold = await db.CastingDecisions.OrderBy(d => d.Id).LastAsync(d => d.TreatedLadleId == bath.Id, Soon);
        Assert.Equal((CastingVerdict.Hold, $"{heat.Number}/{second.Ordinal}", true), (hold.Verdict, hold.Reason, hold.FollowsCorrection));
        var low = Assert.Single(await LowSources.Of(db, bath.Id, Soon));
        Assert.Equal((second.Id, 0.021, 0.03), (low.LadleId, low.MgPercent, low.FloorPercent));
        var view = (await shop.Get<LadlePage>().Load(bath.Id, Soon))!.Pouring!;
        Assert.Equal([("1", false), ("2", true)], view.Poured.Select(m => (m.Label, view.LowSources[0].Concerns(m.Entry.Origin.ObservedAt)))); // 1 was poured before its iron came

        bath = await shop.Treated(bath.Id);
        DecideCastings.Command Release(string? reason) => new(Guid.NewGuid(), shop.Now, bath.Id, bath.Version, CastingVerdict.Release, good, reason) { Password = Shop.Password };
        await shop.Refuses(shop.Get<DecideCastings>(), shop.Metallurgist, Release("seen"), "sampleId", "ladle.lowSource");
        await shop.Refuses(shop.Get<DecideCastings>(), shop.Inspector, Release(null), "reason", "text.missing");
        Assert.True((await Shop.Do(shop.Get<DecideCastings>(), shop.Inspector, Release("nodularity 92 % in mould 2"))).Succeeded);
        Assert.Empty(await LowSources.Of(db, first.Id, Soon)); // the other ladle has nothing to do with it
    }

    [Fact]
    public async Task Mould_PouredAfterALowSourceCame_HoldsWhatWasReleased()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var (heat, _, second, bath) = await Topped(shop, moulds: 1);
        await shop.Sample(heat, second, SampleKind.LastMetal, ("Si", 2.4), ("Mg", 0.021));
        var good = await shop.Sample(heat, bath, SampleKind.LastMetal, ("C", 3.3), ("Si", 2.4), ("Mg", 0.041));
        Assert.True((await shop.Decide(shop.Metallurgist, await shop.Treated(bath.Id), CastingVerdict.Release, good)).Succeeded); // mould 1 is older than that iron

        await shop.Mould(bath, "2", 200);

        Assert.Equal(TreatedLadleState.Held, (await shop.Treated(bath.Id)).State);
    }

    [Fact]
    public async Task LowSource_ThroughALadleBetween_TakenBackOrToppedUpWithMagnesium_IsFollowedAsFarAsItsIronWent()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var (heat, first, second, bath) = await Topped(shop);
        var third = await shop.Poured(heat, 300, ladleId: await shop.SecondLadle("L3"));
        await Over(shop, bath, RestWay.IntoLadle, third.Id, 100);
        await using var db = shop.Db();

        var low = await shop.Sample(heat, second, SampleKind.AfterTreatment, ("Mg", 0.021));
        Assert.Equal([second.Id], (await LowSources.Of(db, third.Id, Soon)).Select(s => s.LadleId)); // through the pouring furnace
        Assert.Empty(await LowSources.Of(db, second.Id, Soon));
        Assert.Equal([bath.Id, third.Id], (await LowSources.Fed(db, second.Id, Soon)).Order());

        var rest = await db.LadleRests.Where(r => r.TreatedLadleId == second.Id).Select(r => r.Id).SingleAsync(Soon);
        await Shop.Do(shop.Get<TakeBack>(), shop.Melter, new(Guid.NewGuid(), shop.Now, LadleEntryKind.Rest, rest, "it was pigged"));
        Assert.Empty(await LowSources.Of(db, bath.Id, Soon));

        await Shop.Do(shop.Get<CorrectSample>(), shop.Inspector, new(
            Guid.NewGuid(), shop.Now, low, heat.Id, first.Id, SampleKind.AfterTreatment, null, null, null, "coins exchanged"));
        Assert.Equal([first.Id], (await LowSources.Of(db, bath.Id, Soon)).Select(s => s.LadleId));
    }

    [Fact]
    public async Task BaseIron_MeasuredBeforeItsTreatment_IsNoLadleThatCameBackLow()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat, 700);
        await shop.Sample(heat, ladle, SampleKind.LadleBase, ("S", 0.012), ("Mg", 0.001)); // told late
        await using var db = shop.Db();
        var times = await LadleTimesRows.One(db, ladle.Id, null, Soon);
        Assert.Equal((null, await db.Taps.Where(t => t.TreatedLadleId == ladle.Id).Select(t => t.MgAfterTreatmentPercent).SingleAsync(Soon)), (times.MgChangedAt, times.MgPercent));

        await shop.Sample(heat, ladle, SampleKind.AfterTreatment, ("Mg", 0.021));
        Assert.Equal(0.021, (await LadleTimesRows.One(db, ladle.Id, null, Soon)).MgPercent);
    }

    /// <summary>A pouring furnace filled from one ladle, a mould poured, topped up from a second one, and another mould.</summary>
    private static async Task<(Heat Heat, TreatedLadle First, TreatedLadle Second, TreatedLadle Bath)> Topped(Shop shop, int moulds = 2)
    {
        var heat = await shop.Bath();
        var first = await shop.Poured(heat, 700);
        var vessel = (await Shop.Do(shop.Get<AddLadle>(), shop.Administrator, new(
            Guid.NewGuid(), shop.Now, "PF", "Pouring furnace", "pouringFurnace", 2000, 0, 0, null, 0.0002, 1, "invented for a test"))).Value;
        await Over(shop, first, RestWay.IntoEmpty, vessel, 600);
        TreatedLadle bath;
        await using (var db = shop.Db()) bath = await db.TreatedLadles.AsNoTracking().SingleAsync(l => l.LadleId == vessel, Soon);
        await shop.Mould(bath, "1", 200);
        var second = await shop.Poured(heat, 500, ladleId: await shop.SecondLadle());
        await Over(shop, second, RestWay.IntoLadle, bath.Id, 300);
        shop.Clock.Advance(1);
        if (moulds > 1) await shop.Mould(bath, "2", 200);
        return (heat, first, second, bath);
    }

    private static async Task Over(Shop shop, TreatedLadle from, RestWay way, long into, double kg) => Assert.True(
        (await Shop.Do(shop.Get<RecordRest>(), shop.Melter, new(Guid.NewGuid(), shop.Now, from.Id, way, into, kg, null))).Succeeded);
}
