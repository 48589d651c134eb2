using MeltShop.Operations.Heats;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Heats;

/// <summary>Iron that leaves and enters the furnace between charge and heel; 2000 kg are planned, masses by hand.</summary>
public sealed class MetalTests : IAsyncLifetime
{
    private Shop shop = null!;
    private Heat heat = null!;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        shop = await Shop.Open(RecordsProvider.Sqlite);
        heat = await shop.Bath();
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task Heat_TwoTapsWithABackChargeBetweenThem_CarriesMassAndAnalysis()
    {
        await shop.Poured(heat, 900);
        var left = await shop.InFurnace();
        shop.Clock.Advance(5);
        await shop.WeighIn(heat, shop.SteelId, 400, intoBath: true);
        shop.Clock.Advance(5);

        var bath = await Bath();

        // 97 % of 400 kg steel with 0.1 % C and 0.2 % Si melt into the rest with 3.65 % C and 1.5 % Si.
        Assert.Equal(left + 388, bath.Metal.Kg, 6);
        Assert.Equal((left * 3.65 + 388 * 0.1) / (left + 388), bath.Metal.Percent(Metallurgy.Elements.Element.C), 6);
        Assert.Equal((left * 1.5 + 388 * 0.2) / (left + 388), bath.Metal.Percent(Metallurgy.Elements.Element.Si), 6);
        Assert.Equal(TreatedLadleState.Pouring, (await shop.Poured(await shop.Heat(heat.Id), 900)).State);
    }

    [Fact]
    public async Task TreatedIron_PouredBack_BringsItsMassAndAnalysis()
    {
        var ladle = await shop.Poured(heat, 900);
        await shop.Sample(heat, ladle, SampleKind.AfterTreatment, ("Si", 2.5), ("Mn", 0.3), ("Mg", 0.045));
        var left = await shop.InFurnace();
        shop.Clock.Advance(5);

        var back = await Shop.Do(shop.Get<PourBack>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, ladle.Id, 300, null, "mould broken"));

        Assert.Equal(left + 300, back.Value, 6);
        var bath = await Bath();
        Assert.Equal((left * 1.5 + 300 * 2.5) / (left + 300), bath.Metal.Percent(Metallurgy.Elements.Element.Si), 6);
        await using var db = shop.Db();
        var line = await db.FurnaceMetals.Include(m => m.Percents).SingleAsync(m => m.Kind == FurnaceMetalKind.PouredBack, Soon);
        Assert.Equal(0.045, line.Percents.Single(p => p.Element == Metallurgy.Elements.Element.Mg).Percent, 9);
        Assert.Equal(ladle.Id, line.TreatedLadleId);
    }

    [Fact]
    public async Task PourBack_WrongInput_IsRefusedAtItsField()
    {
        var ladle = await shop.Poured(heat, 900);
        var other = new Dictionary<string, double> { ["C"] = 3.4 };
        PourBack.Command Command(long? ladleId, double kg, Dictionary<string, double>? percents) => new(Guid.NewGuid(), shop.Now, heat.Id, ladleId, kg, percents, "rest of a ladle");

        await shop.Refuses(shop.Get<PourBack>(), shop.Melter, Command(ladle.Id, 901, null), "kg", "pourBack.overTap");
        await shop.Refuses(shop.Get<PourBack>(), shop.Melter, Command(null, 100, null), "percents", "pourBack.analysisMissing");
        await shop.Refuses(shop.Get<PourBack>(), shop.Melter, Command(null, 2500, other), "kg", "furnace.capacity");
        await shop.Refuses(shop.Get<PourBack>(), shop.Melter, Command(4711, 100, null), "treatedLadleId", "ladle.unknown");
        await shop.Refuses(shop.Get<PourBack>(), shop.Melter, Command(null, 100, other) with { Reason = "" }, "reason", "text.missing");
        Assert.True((await Shop.Do(shop.Get<PourBack>(), shop.Melter, Command(null, 100, other))).Succeeded);
    }

    [Fact]
    public async Task PigOut_MoreThanThereIs_IsRefusedBeyondTheLedgersUncertainty()
    {
        var kg = await shop.InFurnace();

        await shop.Refuses(shop.Get<PigOut>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, kg * 1.06, null), "kg", "furnace.short");
        Assert.Equal(kg - 500, (await Shop.Do(shop.Get<PigOut>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, 500, "too much carbon"))).Value, 6);
        Assert.Equal(kg - 500, await shop.InFurnace(), 6);
    }

    private async Task<BathNow> Bath()
    {
        await using var db = shop.Db();
        return (await BathNow.Load(db, heat, Soon))!;
    }
}
