using MeltShop.Operations.Heats;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Recall;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Castings;

/// <summary>From something suspect to the castings that it may be in, over what the operations recorded, on both databases.</summary>
public sealed class RecallTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Recall_OfALotInThePocket_FollowsItsIronAndNoOther(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var second = await shop.SecondLadle();
        var heat = await shop.Bath();
        var suspect = await Poured(shop, heat, shop.LadleId, "A 17");
        await shop.Mould(suspect, "7", 200);
        var other = await Poured(shop, heat, second, "B 3");

        Assert.Equal([1], await Ordinals(shop, new(RecallFrom.Material, "MGFESI", "a 17")));
        Assert.Equal([1, 2], await Ordinals(shop, new(RecallFrom.Material, "mgfesi")));
        Assert.Empty(await Ordinals(shop, new(RecallFrom.Material, "mgfesi", "C 1")));
        Assert.Empty(await Ordinals(shop, new(RecallFrom.Material, "mgfesi", "A 17", Since: shop.Now)));

        await Shop.Do(shop.Get<RecordRest>(), shop.Melter, new(Guid.NewGuid(), shop.Now, suspect.Id, RestWay.IntoLadle, other.Id, 100, null));
        var view = await Recall(shop, new(RecallFrom.Material, "mgfesi", "A 17"));
        Assert.Equal([(1, RecallWay.Itself, (string?)null), (2, RecallWay.FromLadle, $"{heat.Number}/1")], view.Rows.Select(r => (r.Ladle.Ordinal, r.Way, r.Through)));
        Assert.Equal(["7"], view.Rows[0].Moulds);
        Assert.Equal(["2"], (await Recall(shop, new(RecallFrom.Ladle, $"{heat.Number}/2"))).Rows.Select(r => $"{r.Ladle.Ordinal}"));
        Assert.Equal([2], await Ordinals(shop, new(RecallFrom.Ladle, "L2")));
    }

    [Fact]
    public async Task Recall_WhereNoLotWasRecorded_ListsTheLadleAsPossible()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await Poured(shop, await shop.Bath(), shop.LadleId, null);

        Assert.False(Assert.Single((await Recall(shop, new(RecallFrom.Material, "mgfesi", "A 17"))).Rows).IsSure);
        Assert.True(Assert.Single((await Recall(shop, new(RecallFrom.Material, "mgfesi"))).Rows).IsSure);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Recall_OfAMaterialOfTheCharge_FollowsTheHeel(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        await Poured(shop, heat, shop.LadleId, "A 17");
        await shop.Sample(heat, Records.Laboratory.SampleKind.Bath, ("C", 3.65), ("Si", 1.5), ("Mn", 0.3), ("S", 0.012));
        Assert.True((await shop.Close(await shop.Heat(heat.Id))).Succeeded);
        shop.Clock.Advance(60);
        var next = await shop.StartHeat();
        await using (var db = shop.Db()) Assert.True((await db.Heats.SingleAsync(h => h.Id == next.Id, Soon)).HeelKg > 0);

        var view = await Recall(shop, new(RecallFrom.Heat, heat.Number.ToLowerInvariant()));
        Assert.Equal(heat.Number, Assert.Single(view.Rows).HeatNumber);
        Assert.Equal([next.Number], view.WithoutCastings); // nothing was tapped of it yet
        Assert.Empty((await Recall(shop, new(RecallFrom.Heat, heat.Number, Heels: 0))).WithoutCastings);
        Assert.Equal(heat.Number, Assert.Single((await Recall(shop, new(RecallFrom.Material, "pig"))).Rows).HeatNumber);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Recall_OfALotOfTheCharge_FollowsItAndNoOther(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        await Shop.Do(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, shop.SiliconId, 3, true) { Lot = "S 9" });
        await Poured(shop, heat, shop.LadleId, "A 17");

        var row = Assert.Single((await Recall(shop, new(RecallFrom.Material, "fesi", "s 9"))).Rows, r => r.IsSure);
        Assert.Equal(heat.Number, row.HeatNumber);
        // What was weighed in without a lot may have been of any.
        Assert.DoesNotContain((await Recall(shop, new(RecallFrom.Material, "fesi", "S 8"))).Rows, r => r.IsSure);
    }

    [Fact]
    public async Task Recall_OfAMaterialThatWentInAfterTheTap_LeavesTheLadleOut()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        await Poured(shop, heat, shop.LadleId, "A 17");
        var delivered = shop.Now; // a new delivery; the charge had the one before
        await shop.WeighIn(heat, shop.SiliconId, 3, intoBath: true);

        var view = await Recall(shop, new(RecallFrom.Material, "fesi", Since: delivered));
        Assert.Empty(view.Rows);
        Assert.Equal([heat.Number], view.WithoutCastings);
    }

    [Theory]
    [InlineData(RecallFrom.Heat)]
    [InlineData(RecallFrom.Ladle)]
    [InlineData(RecallFrom.Material)]
    [InlineData(RecallFrom.Certificate)]
    public async Task Recall_OfWhatNobodyKnows_SaysSo(RecallFrom from)
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);

        Assert.False((await Recall(shop, new(from, "no such/3"))).IsFound);
    }

    private static Task<RecallView> Recall(Shop shop, RecallQuestion question) => shop.Get<RecallPage>().Load(question, Soon);

    private static async Task<IEnumerable<int>> Ordinals(Shop shop, RecallQuestion question) => (await Recall(shop, question)).Rows.Select(r => r.Ladle.Ordinal);

    private static async Task<TreatedLadle> Poured(Shop shop, Heat heat, long ladleId, string? alloyLot)
    {
        var pocket = shop.Pocket(heat, 600) with { LadleId = ladleId };
        var id = (await Shop.Do(shop.Get<PreparePocket>(), shop.Melter, pocket with { Extras = pocket.Extras with { Lots = new(Alloy: alloyLot) } })).Value.TreatedLadleId;
        shop.Clock.Advance(5);
        await Shop.Do(shop.Get<RecordTap>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, (await shop.Treated(id)).Version, 600, null));
        shop.Clock.Advance(2);
        await Shop.Do(shop.Get<EndReaction>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, (await shop.Treated(id)).Version));
        return await shop.Treated(id);
    }
}
