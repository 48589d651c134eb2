using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Storing;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Sites;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Ladles;

/// <summary>The card of a ladle whose figures somebody said, on both databases; figures of the tests' own unless a source stands beside.</summary>
public sealed class PocketCardTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Card_WithCoverCopperBagsAndLaterInoculants_KeepsAllAndBooksWhatWentIn(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await Say(shop, LadleFigureKind.MgRecovery, 50, 35, 70);
        await Say(shop, LadleFigureKind.TreatmentLoss, 55);
        var cover = await Material(shop, "punchings", MaterialKind.Cover, MaterialUses.Treatment, new("C", 0.05));
        var heat = await shop.Bath();
        var command = shop.Pocket(heat, 700);

        var made = await Shop.Do(shop.Get<PreparePocket>(), shop.Melter, command with
        {
            Extras = command.Extras with { AlloyKg = 15, CoverMaterialId = cover, CoverRatePercent = 1, StreamRatePercent = 0.1, MouldRatePercent = 0.05 },
        });

        Assert.True(made.Succeeded, string.Join("; ", made.Findings));
        await using var db = shop.Db();
        var card = await db.PocketCards.SingleAsync(Soon);
        var problem = StoredJson.Value<TreatmentProblem>(card.Problem!);
        Assert.Equal((15.0, 7.0, 0.7, 0.35), (card.AlloyKg, card.CoverKg, Math.Round(card.StreamInoculantKg!.Value, 9), Math.Round(card.MouldInoculantKg!.Value, 9)));
        Assert.Equal(MagnesiumTreatment.Solve(problem)!.AlloyKg, card.NeededAlloyKg!.Value, 9);
        Assert.Equal(MagnesiumTreatment.LargestIronKg(problem, 15, 0.03), card.LargestIronKg!.Value, 6);
        Assert.Equal((35.0, 70.0, "Pocket Ladle Alloy Hoist Second"), (card.MgRecoveryLeastPercent, card.MgRecoveryMostPercent, card.Checks));
        Assert.Equal(5000 - 15, (await db.Materials.SingleAsync(m => m.Id == shop.AlloyId, Soon)).StockKg!.Value, 9);
        Assert.Equal(5000 - 7, (await db.Materials.SingleAsync(m => m.Id == cover, Soon)).StockKg!.Value, 9);

        var treated = await shop.Treated(made.Value.TreatedLadleId);
        await Shop.Do(shop.Get<RecordTap>(), shop.Melter, new(Guid.NewGuid(), shop.Now, treated.Id, treated.Version, 710, null, 35));
        var tap = await db.Taps.SingleAsync(Soon);
        Assert.Equal(TimeSpan.FromSeconds(35), tap.ObservedAt - tap.StartedAt);
        Assert.InRange(tap.MgAfterTreatmentPercent!.Value, tap.MgLeastPercent!.Value, tap.MgMostPercent!.Value); // the band holds the line
        Assert.True(tap.LeastMinutesToFloor is null || tap.LeastMinutesToFloor < tap.MinutesToFloor);
    }

    [Theory]
    [InlineData("sulphurHigh", "baseSulphurPercent", "sulphur.tooHigh")] // over 0.03 %: Elkem, Technical Information 9, sandwich
    [InlineData("sulphurLow", "baseSulphurPercent", "sulphur.tooLow")] // 0.004 %: C. Forrest, Sorelmetal Suggestion Sheet 95
    [InlineData("silicon", "alloyMaterialId", "silicon.tooHigh")]
    [InlineData("hot", "temperatureC", "treatment.tooHot")]
    [InlineData("cold", "temperatureC", "treatment.notHotEnough")]
    [InlineData("pocket", "plannedKg", "pocket.full")]
    [InlineData("fill", "plannedKg", "ladle.overfilled")]
    [InlineData("check", "", "checks.open")]
    [InlineData("copper", "pearliteMaterialId", "pearlite.noWindow")]
    public async Task Card_OfIronThatDoesNotFit_IsRefusedWithTheReason(string what, string path, string code)
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await Say(shop, LadleFigureKind.TreatmentLoss, 55);
        await Say(shop, LadleFigureKind.LeastPouring, 1350);
        await Say(shop, LadleFigureKind.MostTreatment, 1500);
        var copper = await Material(shop, "copper", MaterialKind.FerroAlloy, MaterialUses.BathAddition, new("Cu", 99.9));
        var heat = await shop.Bath();
        if (what == "silicon")
        {
            shop.Clock.Advance(1);
            await shop.Sample(heat, SampleKind.Bath, ("C", 3.65), ("Si", 2.2), ("Mn", 0.3), ("S", 0.012));
        }

        var command = shop.Pocket(heat, 700);
        await shop.Refuses(shop.Get<PreparePocket>(), shop.Melter, what switch
        {
            "sulphurHigh" => command with { BaseSulphurPercent = 0.031 },
            "sulphurLow" => command with { BaseSulphurPercent = 0.004 },
            "hot" => command with { TemperatureC = 1501 },
            "cold" => command with { TemperatureC = 1440 }, // 55 K and 8 min at 5 K: 1345 °C
            "pocket" => command with { Extras = command.Extras with { AlloyKg = 41 } },
            "fill" => command with { PlannedKg = 1095 },
            "check" => command with { Extras = command.Extras with { Checks = ["Pocket", "Ladle", "Alloy", "Hoist"] } },
            "copper" => command with { Extras = command.Extras with { PearliteMaterialId = copper } },
            _ => command,
        }, path, code);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Wire_DosedOnTheWeighedMass_MeetsTheTargetAndIsToppedUpNeverInAPocket(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var station = (await Shop.Do(shop.Get<AddLadle>(), shop.Administrator, new(
            Guid.NewGuid(), shop.Now, "W1", "Wire station", "coredWire", 1100, 0, 45, null, 0.001, 5, "invented for a test"))).Value;
        await Say(shop, LadleFigureKind.WireMagnesium, 35, ladleId: station);
        await Say(shop, LadleFigureKind.WireSpeed, 33, ladleId: station);
        var heat = await shop.Bath();
        var treated = await shop.Prepared(heat, 700, station);
        await using var db = shop.Db();
        Assert.Equal((null, 1100.0), await db.PocketCards.Select(c => new ValueTuple<double?, double>(c.AlloyKg, Math.Round(c.StopWeightKg + c.NeededAlloyKg!.Value, 6))).SingleAsync(Soon));
        await Shop.Do(shop.Get<RecordTap>(), shop.Melter, new(Guid.NewGuid(), shop.Now, treated.Id, treated.Version, 800, null));
        treated = await shop.Treated(treated.Id);
        Assert.Equal(TreatedLadleState.Tapped, treated.State);
        Assert.Null((await db.Taps.SingleAsync(Soon)).MgAfterTreatmentPercent);

        // The kilograms of magnesium for 800 kg by the balance, as metres of 35 g/m.
        var problem = StoredJson.Value<TreatmentProblem>((await db.PocketCards.SingleAsync(Soon)).Problem!);
        var metres = MagnesiumTreatment.Solve(problem with { IronKg = 800 })!.AlloyKg * 1000 / 35;
        var command = new DoseMagnesium.Command(Guid.NewGuid(), shop.Now, treated.Id, treated.Version, station, metres);
        await Shop.Do(shop.Get<DoseMagnesium>(), shop.Melter, command);
        await shop.Refuses(shop.Get<DoseMagnesium>(), shop.Melter, command with { EntryKey = Guid.NewGuid() }, "version", "version.stale"); // two presses treat once

        var dose = await db.MagnesiumDoses.SingleAsync(Soon);
        Assert.Equal(0.048, dose.MgPercent, 6); // 0.040 % after 8 min at 0.001 % a minute
        Assert.Equal(18, dose.MinutesToFloor!.Value, 3);
        Assert.Equal(60 * metres / 33, dose.FeedSeconds!.Value, 6);
        var pocket = await shop.Poured(heat, 500);
        await shop.Refuses(
            shop.Get<DoseMagnesium>(), shop.Melter, new(Guid.NewGuid(), shop.Now, pocket.Id, pocket.Version, shop.LadleId, 3), "stationId", "pocket.neverTopUp");
        Assert.True((await Shop.Do(shop.Get<DoseMagnesium>(), shop.Melter, new(Guid.NewGuid(), shop.Now, pocket.Id, pocket.Version, station, 5))).Succeeded);
    }

    [Fact]
    public async Task InMould_HasNoMagnesiumClockInTheLadle()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var ladleId = (await Shop.Do(shop.Get<AddLadle>(), shop.Administrator, new(
            Guid.NewGuid(), shop.Now, "M1", "For moulds", "inMould", 1100, 0, 75, null, 0.001, 5, "invented for a test"))).Value;
        var heat = await shop.Bath();
        await shop.Refuses(shop.Get<PreparePocket>(), shop.Melter, shop.Pocket(heat, 700) with { LadleId = ladleId, BaseSulphurPercent = 0.01 }, "plannedKg", "process.tooMuchIron"); // under 500 kg: Elkem, Technical Information 9
        var made = await Shop.Do(shop.Get<PreparePocket>(), shop.Melter, shop.Pocket(heat, 400) with { LadleId = ladleId, BaseSulphurPercent = 0.01 });
        Assert.True(made.Succeeded, string.Join("; ", made.Findings));
        var treated = await shop.Treated(made.Value.TreatedLadleId);
        await Shop.Do(shop.Get<RecordTap>(), shop.Melter, new(Guid.NewGuid(), shop.Now, treated.Id, treated.Version, 400, null));

        Assert.Equal(TreatedLadleState.Pouring, (await shop.Treated(treated.Id)).State);
        shop.Clock.Advance(60);
        Assert.Null((await shop.Mould(treated, "1", 50)).Value.LateFor);
    }

    [Fact]
    public async Task Figure_WrongInput_IsRefusedAtItsField()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var command = new SetLadleFigure.Command(
            Guid.NewGuid(), shop.Now, shop.LadleId, await Version(shop, shop.LadleId), LadleFigureKind.MgRecovery, 50, 35, 70, FigureStanding.Published, "Elkem, Technical Information 9");

        await shop.Refuses(shop.Get<SetLadleFigure>(), shop.Melter, command, "", "right.missing");
        await shop.Refuses(shop.Get<SetLadleFigure>(), shop.Metallurgist, command with { Least = 51 }, "least", "figure.bandBeside");
        await shop.Refuses(shop.Get<SetLadleFigure>(), shop.Metallurgist, command with { Most = 49 }, "most", "figure.bandBeside");
        await shop.Refuses(shop.Get<SetLadleFigure>(), shop.Metallurgist, command with { Value = 101, Most = null }, "value", "percent.over100");
        await shop.Refuses(shop.Get<SetLadleFigure>(), shop.Metallurgist, command with { Source = "" }, "source", "text.missing");
        await shop.Refuses(shop.Get<SetLadleFigure>(), shop.Metallurgist, command with { Version = Guid.NewGuid() }, "version", "version.stale");
        await shop.Refuses(
            shop.Get<SetLadleFigure>(), shop.Metallurgist, command with { Kind = LadleFigureKind.Capacity, Value = 1099, Least = null, Most = null }, "value", "ladle.fillOverCapacity");
        Assert.True((await Shop.Do(shop.Get<SetLadleFigure>(), shop.Metallurgist, command)).Succeeded);
        Assert.True((await Shop.Do(shop.Get<SeePreheat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.LadleId, LadlePreheat.Hot, true))).Succeeded);
    }

    private static async Task Say(Shop shop, LadleFigureKind kind, double value, double? least = null, double? most = null, long? ladleId = null) =>
        Assert.True((await Shop.Do(shop.Get<SetLadleFigure>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, ladleId ?? shop.LadleId, await Version(shop, ladleId ?? shop.LadleId), kind, value, least, most, FigureStanding.Shop, "invented for a test"))).Succeeded);

    private static async Task<Guid> Version(Shop shop, long ladleId)
    {
        await using var db = shop.Db();
        return await db.Ladles.Where(l => l.Id == ladleId).Select(l => l.Version).SingleAsync(Soon);
    }

    private static async Task<long> Material(Shop shop, string code, MaterialKind kind, MaterialUses uses, MaterialPercentInput percent)
    {
        var id = (await Shop.Do(shop.Get<AddMaterial>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, code, code, kind, uses, 400, 100, [percent], "invented for a test", "memory"))).Value;
        await Shop.Do(shop.Get<BookStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, StockKind.Counted, 5000));
        return id;
    }
}
