using MeltShop.Operations.Charging;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Heats;

public sealed class HeatTests : IAsyncLifetime
{
    private Shop shop = null!;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => shop = await Shop.Open(RecordsProvider.Sqlite);

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Theory]
    [InlineData(double.NaN, "number.notANumber")]
    [InlineData(double.PositiveInfinity, "number.notANumber")]
    [InlineData(-1, "mass.negative")]
    [InlineData(0, "mass.zero")]
    public async Task WeighIn_WrongMass_IsRefusedAtKg(double kg, string code)
    {
        var heat = await shop.StartHeat();

        await shop.Refuses(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, shop.SteelId, kg, false), "kg", code);
    }

    [Fact]
    public async Task WeighIn_AheadOfTheClock_IsRefusedBeyondFiveMinutes()
    {
        var heat = await shop.StartHeat();
        WeighIn.Command Ahead(double minutes) => new(Guid.NewGuid(), shop.Now.AddMinutes(minutes), heat.Id, shop.SteelId, 10, false);

        await shop.Refuses(shop.Get<WeighIn>(), shop.Melter, Ahead(5.1), "observedAt", "time.future");
        Assert.True((await Shop.Do(shop.Get<WeighIn>(), shop.Melter, Ahead(4.9))).Succeeded);
    }

    [Fact]
    public async Task WeighIn_BeforeTheHeatBegan_IsRefusedBeyondTenMinutes()
    {
        var heat = await shop.StartHeat();
        WeighIn.Command Before(double minutes) => new(Guid.NewGuid(), heat.StartedAt.AddMinutes(-minutes), heat.Id, shop.SteelId, 10, false);

        var findings = await shop.Refuses(shop.Get<WeighIn>(), shop.Melter, Before(10.1), "observedAt", "time.beforeHeat");
        Assert.Equal([heat.Number, heat.StartedAt], findings[0].Arguments);
        Assert.True((await Shop.Do(shop.Get<WeighIn>(), shop.Melter, Before(9.9))).Succeeded);
    }

    [Theory]
    [InlineData(3750.01)]
    [InlineData(1e9)]
    public async Task WeighIn_MoreThanTheFurnaceHolds_IsRefusedAtKg(double kg)
    {
        var heat = await shop.StartHeat();

        var findings = await shop.Refuses(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, shop.SteelId, kg, false), "kg", "weighing.overFurnace");
        Assert.Equal([3000d, 3750d], findings[0].Arguments);
        Assert.True((await Shop.Do(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, shop.SteelId, 3750, false))).Succeeded);
    }

    [Fact]
    public async Task WeighIn_MoreThanTheYardHas_IsTakenAndTheLedgerShowsIt()
    {
        var heat = await shop.StartHeat();

        foreach (var kg in new[] { 2500, 2600 }) await shop.WeighIn(heat, shop.SteelId, kg);

        await using var db = shop.Db();
        Assert.Equal(-100, (await db.Materials.SingleAsync(m => m.Id == shop.SteelId, Soon)).StockKg);
    }

    [Fact]
    public async Task WeighIn_IntoTheBathAfterTheSample_IsInTheNextHeel()
    {
        var heat = await shop.Bath();
        shop.Clock.Advance(5);
        await shop.WeighIn(heat, shop.SiliconId, 10, intoBath: true);

        var closed = await shop.Close(await shop.Heat(heat.Id));

        Assert.InRange(closed.Value.Analysis["Si"], 1.5 + 0.30, 1.5 + 0.34); // 6.9 kg Si into 2 t
        Assert.DoesNotContain("Al", closed.Value.Analysis.Keys);
    }

    [Fact]
    public async Task StartHeat_FurnaceHasAHeat_IsRefused()
    {
        var heat = await shop.StartHeat();

        await shop.Refuses(shop.Get<StartHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.PlanId), "planId", "furnace.busy");
        await shop.Refuses(
            shop.Get<PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, new ChargeChoice(shop.FurnaceId, shop.DuctileId, 2000)), "heelKg", "heel.unknown");
    }

    [Fact]
    public async Task CancelHeat_BeforeTheTap_KeepsItsNumber()
    {
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 100);

        await shop.Refuses(shop.Get<CancelHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, "power cut"), "", "right.missing");
        await shop.Refuses(shop.Get<CancelHeat>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, " "), "reason", "text.missing");
        Assert.True((await Shop.Do(shop.Get<CancelHeat>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, "power cut"))).Succeeded);

        var next = await shop.StartHeat();
        Assert.Equal(("TB-2026-0001", "TB-2026-0002"), (heat.Number, next.Number));
        Assert.Equal(97, next.HeelKg, 9);
        await using var db = shop.Db();
        var heel = await db.Heels.Include(h => h.Percents).SingleAsync(Soon);
        Assert.Empty(heel.Percents); // nobody measured it, so nothing is said of it
    }

    [Fact]
    public async Task CloseHeat_MetalLeftAndNoBathSample_IsRefused()
    {
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 100);

        await shop.Refuses(shop.Get<CloseHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, 0), "heatId", "heat.noBathSample");
    }

    [Fact]
    public async Task CloseHeat_LadleUnpoured_IsRefusedUntilItIsAbandoned()
    {
        var heat = await shop.Bath();
        var ladle = await shop.Prepared(heat);

        await shop.Refuses(shop.Get<CloseHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, 0), "heatId", "ladle.unpoured");
        await Shop.Do(shop.Get<AbandonPocket>(), shop.Melter, new(Guid.NewGuid(), shop.Now, ladle.Id, ladle.Version, "ladle cold"));
        Assert.True((await shop.Close(heat)).Succeeded);
    }

    [Fact]
    public async Task CloseHeat_PigMoreThanThereIs_IsRefusedBeyondTheUncertainty()
    {
        var heat = await shop.Bath(); // 2000 kg, known to 5 %

        await shop.Refuses(shop.Get<CloseHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, 2110), "piggedKg", "furnace.short");
        var closed = await shop.Close(heat, piggedKg: 2050);

        Assert.Equal(0, closed.Value.HeelKg);
        Assert.Empty(closed.Value.Analysis);
        Assert.Equal(0, await shop.InFurnace(), 9);
        await using var db = shop.Db();
        Assert.Equal(50, (await db.FurnaceMetals.SingleAsync(m => m.Kind == FurnaceMetalKind.Dipped, Soon)).Kg, 6);
    }

    [Fact]
    public async Task CloseHeat_StaleOrClosed_IsToldAndRefused()
    {
        var heat = await shop.Bath();
        await shop.Refuses(shop.Get<CloseHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, Guid.NewGuid(), 0), "version", "version.stale");
        await shop.Close(heat);
        heat = await shop.Heat(heat.Id);

        await shop.Refuses(shop.Get<CloseHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, 0), "heatId", "state.wrong");
        await shop.Refuses(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, shop.SteelId, 1, false), "heatId", "state.wrong");
        await shop.Refuses(
            shop.Get<RecordSample>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, null, SampleKind.Bath, [Shop.Burn(("C", 3.5))]), "heatId", "state.wrong");
    }

    [Fact]
    public async Task DipFurnace_NoHeatInIt_BringsAHeelAndDrainsIt()
    {
        DipFurnace.Command Dip(double kg, IReadOnlyDictionary<string, double>? percents, string reason = "load cell") =>
            new(Guid.NewGuid(), shop.Now, shop.FurnaceId, kg, percents, reason);
        var analysis = new Dictionary<string, double> { ["C"] = 3.6, ["Si"] = 1.9 };
        var operation = shop.Get<DipFurnace>();

        await shop.Refuses(operation, shop.Melter, Dip(-1, null), "kg", "mass.negative");
        await shop.Refuses(operation, shop.Melter, Dip(3001, null), "kg", "furnace.capacity");
        await shop.Refuses(operation, shop.Melter, Dip(1, null, ""), "reason", "text.missing");
        await shop.Refuses(operation, shop.Melter, Dip(1, new Dictionary<string, double> { ["Si"] = 101 }), "percents.Si", "percent.over100");
        Assert.Equal(500, (await Shop.Do(operation, shop.Melter, Dip(500, analysis))).Value);
        Assert.Equal(-20, (await Shop.Do(operation, shop.Melter, Dip(480, null))).Value, 9);

        var heat = await shop.StartHeat();
        Assert.Equal(480, heat.HeelKg, 9);
        await shop.Refuses(operation, shop.Melter, Dip(470, analysis), "percents", "furnace.busy");
        Assert.Equal(-10, (await Shop.Do(operation, shop.Melter, Dip(470, null))).Value, 9);
        Assert.Equal(470, await shop.InFurnace(), 9);
        await using var db = shop.Db();
        var heel = await db.Heels.Include(h => h.Percents).OrderBy(h => h.Id).LastAsync(Soon);
        Assert.Equal((480, 2), (heel.Kg, heel.Percents.Count)); // the metal is the same, so its analysis stays
    }

    [Theory]
    [InlineData(999.9)]
    [InlineData(1800.1)]
    [InlineData(double.NaN)]
    public async Task RecordTemperature_NoLiquidIron_IsRefused(double temperatureC)
    {
        var heat = await shop.StartHeat();
        var code = double.IsNaN(temperatureC) ? "number.notANumber" : "temperature.outOfRange";

        await shop.Refuses(shop.Get<RecordTemperature>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, null, temperatureC), "temperatureC", code);
    }
}
