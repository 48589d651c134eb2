using MeltShop.Operations.Drafts;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Drafts;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Tests.Drafts;

public sealed class DraftTests
{
    private const string Cell = "burns[0].C";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Draft_Typed_IsSeenWithItsPersonAndLeavesNoTrail(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await using var db = shop.Db();
        var before = (db.TrailRows.Count(), db.Entries.Count());

        var kept = await Keep(shop, shop.Melter, "3.61", null);
        var again = await Keep(shop, shop.Melter, "3.61", null);

        var draft = Assert.Single(await shop.Get<DraftRows>().Load("heat/1/sample", Cancellation));
        Assert.Equal((Cell, "3.61", "The melter", kept.Value), (draft.Field, draft.Text, draft.Person, draft.Version));
        Assert.Equal(kept.Value, again.Value);
        Assert.Equal(before, (db.TrailRows.Count(), db.Entries.Count()));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Draft_OfSomebodyElseThatWasNotSeen_StaysAndIsNamed(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var first = await Keep(shop, shop.Melter, "3.61", null);

        var refused = await Keep(shop, shop.Inspector, "3.16", null);
        var finding = Assert.Single(refused.Findings);
        Assert.Equal("draft.other", finding.Code);
        Assert.Equal(["The melter", "3.61", "3.16"], finding.Arguments);

        Assert.True((await Keep(shop, shop.Inspector, "3.16", first.Value)).Succeeded);
        Assert.Equal("The inspector", Assert.Single(await shop.Get<DraftRows>().Load("heat/1/sample", Cancellation)).Person);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Draft_TypedByManyAtOnce_IsOneRow(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);

        var kept = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Keep(shop, shop.Melter, "3.61", null)));

        Assert.All(kept, outcome => Assert.True(outcome.Succeeded));
        Assert.Single(await shop.Get<DraftRows>().Load("heat/1/sample", Cancellation));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Drafts_OfASample_GoWithItsAcceptanceAndStayWithItsRefusal(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        var subject = DraftSubject.BathSample(heat.Id);
        await shop.Get<KeepDraft>().Run(shop.Melter, new(subject, Cell, "3.61", null), Cancellation);
        RecordSample.Command sample = new(Guid.NewGuid(), shop.Now, heat.Id + 1000, null, SampleKind.Bath, [[new("C", 3.61, false, "3.61")]]) { DraftSubject = subject };

        Assert.False((await Shop.Do(shop.Get<RecordSample>(), shop.Melter, sample)).Succeeded);
        Assert.Single(await shop.Get<DraftRows>().Load(subject, Cancellation));

        await using var heard = shop.Get<ChangeNotices>().Listen(Cancellation).GetAsyncEnumerator(Cancellation);
        Assert.True((await Shop.Do(shop.Get<RecordSample>(), shop.Melter, sample with { EntryKey = Guid.NewGuid(), HeatId = heat.Id })).Succeeded);
        Assert.Empty(await shop.Get<DraftRows>().Load(subject, Cancellation));
        Assert.True(await heard.MoveNextAsync());
        Assert.Contains(heard.Current, change => change.Kind == ChangeKind.Draft); // other tablets at the coin take its texts away
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Draft_OfSomebodyWhoMayOnlyRead_IsRefused(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);

        Assert.Equal("right.missing", Assert.Single((await Keep(shop, shop.Administrator, "3.61", null)).Findings).Code);
        Assert.Equal("draft.subject", Assert.Single((await shop.Get<KeepDraft>().Run(shop.Melter, new("anything", Cell, "1", null), Cancellation)).Findings).Code);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Drafts_ThrownAway_AreGoneForAll(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await Keep(shop, shop.Melter, "3.61", null);

        Assert.Equal(1, (await shop.Get<DropDrafts>().Run(shop.Inspector, "heat/1/sample", Cancellation)).Value);
        Assert.Empty(await shop.Get<DraftRows>().Load("heat/1/sample", Cancellation));
    }

    private static Task<Outcome<Guid?>> Keep(Shop shop, Acting who, string text, Guid? seen) =>
        shop.Get<KeepDraft>().Run(who, new("heat/1/sample", Cell, text, seen), Cancellation);
}
