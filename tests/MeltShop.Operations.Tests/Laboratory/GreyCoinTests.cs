using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Heats;

namespace MeltShop.Operations.Tests.Laboratory;

/// <summary>Carbon that a spark cannot tell is not used, and is said to come from elsewhere; on both databases.</summary>
public sealed class GreyCoinTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task GreyCoin_OfTheBath_LeavesTheCarbonToTheChainAndRefusesACorrection(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var before = (await Bath(shop, heat))!;
        shop.Clock.Advance(5);
        await shop.WeighIn(heat, shop.CarburiserId, 2, intoBath: true);
        var throughChain = (await Bath(shop, heat))!.Metal.Percent(Element.C);
        shop.Clock.Advance(5);
        var grey = await Coin(shop, heat, isGrey: true, null, ("C", 3.2), ("Si", 1.62));

        var bath = (await Bath(shop, heat))!;
        Assert.True(throughChain > before.Metal.Percent(Element.C));
        Assert.Equal((throughChain, 1.62, grey), (bath.Metal.Percent(Element.C), bath.Metal.Percent(Element.Si), bath.SampleId));
        Assert.False(bath.IsCarbonMeasured);
        await shop.Refuses(shop.Get<AcceptCorrection>(), shop.Melter, Correction(shop, heat, grey), "", "bath.greyCarbon");
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task GreyCoin_WithCombustionAfterIt_HasTheCarbonOfTheCombustionAndTheRestOfTheCoin(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var combustion = (await Shop.Do(shop.Get<AddInstrument>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, "oven", "Combustion", InstrumentKind.Combustion, true, [new("C"), new("S")]))).Value;
        shop.Clock.Advance(5);
        await Coin(shop, heat, isGrey: true, null, ("C", 3.2), ("Si", 1.62), ("Mn", 0.3));
        var last = await Coin(shop, heat, isGrey: true, combustion, ("C", 3.58), ("S", 0.013));

        var bath = (await Bath(shop, heat))!;
        Assert.True(bath.IsCarbonMeasured);
        Assert.Equal((3.58, 1.62, 0.013), (bath.Metal.Percent(Element.C), bath.Metal.Percent(Element.Si), bath.Metal.Percent(Element.S)));
        var outcome = await Shop.Do(shop.Get<AcceptCorrection>(), shop.Melter, Correction(shop, heat, last));
        Assert.DoesNotContain("bath.greyCarbon", outcome.Findings.Select(f => f.Code));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task GreyCoin_AsTheOnlyOne_LeavesTheCarbonUnknown(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.PigIronId, 2000);
        await Coin(shop, heat, isGrey: true, null, ("C", 3.2), ("Si", 1.62));

        var bath = (await Bath(shop, heat))!;
        Assert.False(bath.IsCarbonMeasured);
        Assert.Equal([Element.Si], bath.Metal.Elements);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Carbon_OfAGreyCoin_ComesFromCombustionThenTheCupThenTheFurnaceSample(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var grey = await Coin(shop, heat, isGrey: true, null, ("C", 3.2), ("Si", 2.0), ("P", 0.05));
        await Shop.Do(shop.Get<RecordSample>(), shop.Melter, new(
            Guid.NewGuid(), shop.Now, heat.Id, null, SampleKind.Cup, [], Figures: [new(FigureQuantity.LiquidusC, 1196.8275, "1196,8")]));

        var view = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;
        var sources = CarbonElsewhere.Of(view.Samples.Single(s => s.Id == grey), view.Samples);

        // CEL 3.825 of the worked example of the liquidus: 3.825 − 2.0/4 − 0.05/2 = 3.30.
        Assert.Equal([CarbonSource.CupLiquidus, CarbonSource.FurnaceSample], sources.Select(s => s.Source));
        Assert.Equal(3.30, sources[0].Percent, 6);
        Assert.Equal(3.65, sources[1].Percent, 9);
        Assert.False(view.Samples.Single(s => s.Id == grey).CarbonIsJudged);
    }

    // White cup, from memory: 0.01693·1110 − 0.00796·1200 − 6.05 = 3.1903 % C.
    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Heel_OfGreyCoinsWithACup_HasTheCarbonOfTheCupThroughTheChain(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.PigIronId, 2000);
        await Cup(shop, heat, null, (FigureQuantity.WhiteEutecticC, 1110), (FigureQuantity.LiquidusC, 1200));
        Assert.Null(await Bath(shop, heat)); // a cup alone is no analysis
        shop.Clock.Advance(5);
        var grey = await Coin(shop, heat, isGrey: true, null, ("C", 2.9), ("Si", 1.62));

        var bath = (await Bath(shop, heat))!;
        Assert.Equal(3.1903, bath.Metal.Percent(Element.C), 9);
        Assert.Equal((1.62, grey), (bath.Metal.Percent(Element.Si), bath.SampleId));
        Assert.False(bath.IsCarbonMeasured);
        var closed = (await shop.Close(await shop.Heat(heat.Id))).Value.Analysis;
        Assert.Equal(3.1903, closed["C"], 9);
        Assert.Equal(1.62, closed["Si"], 9);
    }

    // CEL 3.825 of the worked example of the liquidus: 3.825 − 2.0/4 − 0.05/2 = 3.30.
    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Heel_OfGreyCoinsWithTheLiquidusOfACup_NeedsItsSiliconAndPhosphorus(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.PigIronId, 2000);
        var coin = await Coin(shop, heat, isGrey: true, null, ("C", 2.9), ("Si", 2.0), ("P", 0.05));
        await Cup(shop, heat, null, (FigureQuantity.LiquidusC, 1196.8275));

        var bath = (await Bath(shop, heat))!;
        Assert.Equal(3.30, bath.Metal.Percent(Element.C), 6);
        Assert.Equal(coin, bath.SampleId);
        shop.Clock.Advance(5);
        await Coin(shop, heat, isGrey: false, null, ("C", 3.44), ("Si", 2.0));
        Assert.Equal(3.44, (await Bath(shop, heat))!.Metal.Percent(Element.C)); // a coin that froze white is believed
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Heel_OfAGreyCoinAlone_HasNoCarbonAndNotTheSparks(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.PigIronId, 2000);
        await Coin(shop, heat, isGrey: true, null, ("C", 2.9), ("Si", 1.62));
        var view = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;
        Assert.False(CarbonElsewhere.IsKnownInFurnace(view.Samples));

        Assert.Equal(["Si"], (await shop.Close(await shop.Heat(heat.Id))).Value.Analysis.Keys);
    }

    private static async Task Cup(Shop shop, Heat heat, long? ladle, params (FigureQuantity Quantity, double Value)[] figures) =>
        await Shop.Do(shop.Get<RecordSample>(), shop.Melter, new(
            Guid.NewGuid(), shop.Now, heat.Id, ladle, SampleKind.Cup, [], Figures: [.. figures.Select(f => new FigureInput(f.Quantity, f.Value, FormattableString.Invariant($"{f.Value}")))]));

    private static async Task<BathNow?> Bath(Shop shop, Heat heat)
    {
        await using var db = shop.Db();
        return await BathNow.Load(db, heat, Soon);
    }

    private static async Task<long> Coin(Shop shop, Heat heat, bool isGrey, long? instrument, params (string Element, double Percent)[] percents) =>
        (await Shop.Do(shop.Get<RecordSample>(), shop.Melter, new(
            Guid.NewGuid(), shop.Now, heat.Id, null, SampleKind.Bath, [Shop.Burn(percents)], InstrumentId: instrument, GreyFracture: isGrey))).Value;

    private static AcceptCorrection.Command Correction(Shop shop, Heat heat, long sample) =>
        new(Guid.NewGuid(), shop.Now, heat.Id, sample, new(1450, CorrectionGoal.Cost), new(0, new Dictionary<string, double>()));
}
