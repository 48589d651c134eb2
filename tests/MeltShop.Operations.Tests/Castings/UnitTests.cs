using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Castings;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Operations.Tests.Castings;

/// <summary>A test unit apart from the other castings of its ladle, on both databases.</summary>
public sealed class UnitTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Unit_WithTheLateMouldHeldApart_LetsTheOthersGoAndStaysItself(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (heat, ladle) = await Poured(shop);
        await shop.Mould(ladle, "1", 200);
        shop.Clock.Advance(40);
        Assert.NotNull((await shop.Mould(ladle, "2", 200)).Value.LateFor);
        var sample = await LastMetal(shop, heat, ladle);
        await Piece(shop, ladle, "A", "in time", "1");
        await Piece(shop, ladle, "B", "late", "2");

        Assert.Contains((await shop.Decide(shop.Metallurgist, await shop.Treated(ladle.Id), CastingVerdict.Release, sample)).Findings, f => f.Code == "mould.late");
        await Decide(shop, shop.Melter, ladle, "Late", CastingVerdict.Hold, null, "the line stood");
        Assert.True((await shop.Decide(shop.Metallurgist, await shop.Treated(ladle.Id), CastingVerdict.Release, sample)).Succeeded);

        var view = (await shop.Get<LadlePage>().Load(ladle.Id, Soon))!.Treated!;
        Assert.Equal((TreatedLadleState.Released, CastingVerdict.Release, "late"), (view.State, view.Decision!.Verdict, Assert.Single(view.Apart).TestUnit));
        var units = await Units(shop, ladle);
        Assert.Equal((true, false), (units.MayGo("1", true), units.MayGo("2", true)));
        var treated = await shop.Treated(ladle.Id);
        await shop.Refuses(
            shop.Get<DecideUnit>(), shop.Metallurgist, Command(shop, treated, "late", CastingVerdict.Release, sample, "looks good"), "sampleId", "mould.late");
        await Decide(shop, shop.Inspector, ladle, "late", CastingVerdict.Release, sample, "nodularity seen on the casting");
        Assert.True((await Units(shop, ladle)).MayGo("2", true));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Unit_ReleasedApart_IsHeldAgainWhenATestOfItsLadleFails(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (heat, ladle) = await Poured(shop);
        await shop.Mould(ladle, "1", 200);
        await shop.Mould(ladle, "2", 200);
        var sample = await LastMetal(shop, heat, ladle);
        var piece = await Piece(shop, ladle, "A", "housings", "1");
        await Decide(shop, shop.Metallurgist, ladle, "housings", CastingVerdict.Release, sample, "wanted at once");
        Assert.Equal((true, false), ((await Units(shop, ladle)).MayGo("1", false), (await Units(shop, ladle)).MayGo("2", false)));
        Assert.Equal(TreatedLadleState.Held, (await shop.Treated(ladle.Id)).State); // its last metal was sampled, and nobody decided
        var version = (await shop.Treated(ladle.Id)).Version;

        await Shop.Do(shop.Get<RecordTestResults>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, piece, new Dictionary<CastProperty, double> { [CastProperty.TensileMPa] = 420 }));

        Assert.Equal(CastingVerdict.Hold, (await Units(shop, ladle)).Of("Housings")!.Apart);
        Assert.NotEqual(version, (await shop.Treated(ladle.Id)).Version); // a certificate drawn from what was seen before is stale
    }

    [Fact]
    public async Task Unit_ThatNobodyNamed_OrOfAMouldThatWasNotPoured_IsRefused()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var (_, ladle) = await Poured(shop);
        await shop.Mould(ladle, "1", 200);
        ladle = await shop.Treated(ladle.Id);

        await shop.Refuses(shop.Get<DecideUnit>(), shop.Melter, Command(shop, ladle, "nothing", CastingVerdict.Hold, null, "no"), "testUnit", "testUnit.unknown");
        await shop.Refuses(
            shop.Get<RecordTestPiece>(), shop.Melter, new(Guid.NewGuid(), shop.Now, ladle.Id, "A", TestPieceShape.CastOn, SampleType.CastSample, 25, "u") { Moulds = ["7"] },
            "moulds", "mould.unknown");
        await Piece(shop, ladle, "A", "u", "1");
        await shop.Refuses(shop.Get<DecideUnit>(), shop.Melter, Command(shop, ladle, "u", CastingVerdict.Hold, null, ""), "reason", "text.missing");
        await shop.Refuses(shop.Get<DecideUnit>(), shop.Melter, Command(shop, ladle, "u", CastingVerdict.Scrap, null, "cracked"), "", "right.missing");
        await Decide(shop, shop.Metallurgist, ladle, "u", CastingVerdict.Scrap, null, "cracked");
        await shop.Refuses(
            shop.Get<DecideUnit>(), shop.Inspector, Command(shop, await shop.Treated(ladle.Id), "u", CastingVerdict.Hold, null, "no"), "testUnit", "testUnit.decided");
    }

    private static async Task<(Heat Heat, TreatedLadle Ladle)> Poured(Shop shop)
    {
        var heat = await shop.Bath();
        return (heat, await shop.Poured(heat, 900));
    }

    private static Task<long> LastMetal(Shop shop, Heat heat, TreatedLadle ladle) => shop.Sample(heat, ladle, SampleKind.LastMetal, ("C", 3.3), ("Si", 2.4), ("Mg", 0.041));

    private static async Task<long> Piece(Shop shop, TreatedLadle ladle, string label, string unit, params string[] moulds) =>
        (await Shop.Do(shop.Get<RecordTestPiece>(), shop.Melter, new(
            Guid.NewGuid(), shop.Now, ladle.Id, label, TestPieceShape.CastOn, SampleType.CastSample, 25, unit) { Moulds = moulds })).Value;

    private static DecideUnit.Command Command(Shop shop, TreatedLadle ladle, string unit, CastingVerdict verdict, long? sampleId, string reason) =>
        new(Guid.NewGuid(), shop.Now, ladle.Id, ladle.Version, unit, verdict, sampleId, reason) { Password = Shop.Password };

    private static async Task Decide(Shop shop, Acting who, TreatedLadle ladle, string unit, CastingVerdict verdict, long? sampleId, string reason)
    {
        var outcome = await Shop.Do(shop.Get<DecideUnit>(), who, Command(shop, await shop.Treated(ladle.Id), unit, verdict, sampleId, reason));
        Assert.True(outcome.Succeeded, string.Join("; ", outcome.Findings));
    }

    private static async Task<CastingUnits> Units(Shop shop, TreatedLadle ladle)
    {
        await using var db = shop.Db();
        return await CastingUnits.Load(db, ladle.Id, Soon);
    }
}
