using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Tests.Laboratory;

/// <summary>A coin that is known of before its result, and samples that bring figures instead of burns; on both databases.</summary>
public sealed class CoinTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    public static TheoryData<string, string, string> WrongFigures => new()
    {
        { "none", "figures", "sample.noFigures" },
        { "burns", "burns", "sample.figuresOnly" },
        { "chill", "figures.ChillMm", "sample.otherFigures" },
        { "twice", "figures.LiquidusC", "figure.twice" },
        { "cold", "figures.LiquidusC", "temperature.outOfRange" },
        { "notANumber", "figures.LiquidusC", "number.notANumber" },
        { "text", "figures.LiquidusC", "text.missing" },
        { "arrests", "figures.EutecticHighC", "figure.noRecalescence" },
    };

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Coin_OnItsWay_IsAnsweredOnceOrLostWithAReason(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var taken = shop.Now;
        var coin = (await Shop.Do(shop.Get<SendCoin>(), shop.Melter, Sent(shop, heat, "17") with { ObservedAt = taken })).Value;
        var other = (await Shop.Do(shop.Get<SendCoin>(), shop.Melter, Sent(shop, heat, "18"))).Value;
        shop.Clock.Advance(4);

        var id = (await Shop.Do(shop.Get<RecordSample>(), shop.Melter, Result(shop, heat, coin) with { ObservedAt = taken })).Value;

        await using var db = shop.Db();
        Assert.Equal(coin, (await db.Samples.FindAsync([id], Soon))!.CoinOnItsWayId);
        await shop.Refuses(shop.Get<RecordSample>(), shop.Melter, Result(shop, heat, coin), "coinOnItsWayId", "coin.notWaiting");
        await shop.Refuses(shop.Get<LoseCoin>(), shop.Melter, new(Guid.NewGuid(), shop.Now, coin, "fell apart"), "coinId", "coin.notWaiting");
        await shop.Refuses(shop.Get<LoseCoin>(), shop.Melter, new(Guid.NewGuid(), shop.Now, other, " "), "reason", "text.missing");
        await Shop.Do(shop.Get<LoseCoin>(), shop.Melter, new(Guid.NewGuid(), shop.Now, other, "fell apart"));
        await shop.Refuses(shop.Get<RecordSample>(), shop.Melter, Result(shop, heat, other), "coinOnItsWayId", "coin.notWaiting");
        await shop.Refuses(shop.Get<SendCoin>(), shop.Melter, Sent(shop, heat, " "), "coinNumber", "text.missing");
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Cup_WithItsArrests_IsKeptAndDoesNotSayWhatTheBathIs(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        var id = (await Shop.Do(shop.Get<RecordSample>(), shop.Melter, Cup(shop, heat))).Value;

        Assert.Equal(HeatState.Charging, (await shop.Heat(heat.Id)).State);
        await using var db = shop.Db();
        var figures = db.Entry((await db.Samples.FindAsync([id], Soon))!).Collection(s => s.Figures);
        await figures.LoadAsync(Soon);
        Assert.Equal([(FigureQuantity.LiquidusC, 1152.5, "1152,5"), (FigureQuantity.EutecticLowC, 1138, "1138")], figures.CurrentValue!.OrderBy(f => f.Quantity).Select(f => (f.Quantity, f.Value, f.InstrumentText)));
    }

    [Theory]
    [MemberData(nameof(WrongFigures))]
    public async Task Cup_WithAWrongFigure_IsRefusedAtItsField(string what, string path, string code)
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var fine = Cup(shop, await shop.StartHeat());
        FigureInput liquidus = new(FigureQuantity.LiquidusC, 1150, "1150");
        var command = what switch
        {
            "none" => fine with { Figures = [] },
            "burns" => fine with { Burns = [Shop.Burn(("C", 3.5))] },
            "chill" => fine with { Figures = [new(FigureQuantity.ChillMm, 4, "4")] },
            "twice" => fine with { Figures = [liquidus, liquidus] },
            "cold" => fine with { Figures = [liquidus with { Value = 115 }] },
            "notANumber" => fine with { Figures = [liquidus with { Value = double.NaN }] },
            "text" => fine with { Figures = [liquidus with { InstrumentText = "" }] },
            _ => fine with { Figures = [new(FigureQuantity.EutecticLowC, 1146, "1146"), new(FigureQuantity.EutecticHighC, 1140, "1140")] },
        };
        await shop.Refuses(shop.Get<RecordSample>(), shop.Melter, command, path, code);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task LadleBase_OfALadleThatIsOnlyPrepared_IsTakenAtTheSpout(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var ladle = await shop.Prepared(heat);

        Assert.True(await shop.Sample(heat, ladle, SampleKind.LadleBase, ("C", 3.6), ("S", 0.011)) > 0);
        await shop.Refuses(
            shop.Get<RecordSample>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, ladle.Id, SampleKind.AfterTreatment, [Shop.Burn(("Mg", 0.04))]),
            "treatedLadleId", "state.wrong");
    }

    private static SendCoin.Command Sent(Shop shop, Heat heat, string number) => new(Guid.NewGuid(), shop.Now, heat.Id, null, SampleKind.AfterCorrection, number);

    private static RecordSample.Command Result(Shop shop, Heat heat, long coin) =>
        new(Guid.NewGuid(), shop.Now, heat.Id, null, SampleKind.AfterCorrection, [Shop.Burn(("C", 3.6))], CoinOnItsWayId: coin);

    private static RecordSample.Command Cup(Shop shop, Heat heat) => new(
        Guid.NewGuid(), shop.Now, heat.Id, null, SampleKind.Cup, [],
        Figures: [new(FigureQuantity.LiquidusC, 1152.5, "1152,5"), new(FigureQuantity.EutecticLowC, 1138, "1138")]);
}
