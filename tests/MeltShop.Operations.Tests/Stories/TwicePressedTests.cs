using MeltShop.Operations.Heats;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Stories;

public sealed class TwicePressedTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task WeighIn_TheSameEntryTenTimesAtOnce_IsOneWeighing(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        var command = new WeighIn.Command(Guid.NewGuid(), shop.Now, heat.Id, shop.SteelId, 100, IntoBath: false);

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => Shop.Do(shop.Get<WeighIn>(), shop.Melter, command)));

        Assert.Single(outcomes.Select(o => o.Value).Distinct());
        await using var db = shop.Db();
        Assert.Equal(100, (await db.Weighings.SingleAsync(Soon)).Kg);
        Assert.Equal(97, await shop.InFurnace(), 9);
        Assert.Equal(4900, (await db.Materials.SingleAsync(m => m.Id == shop.SteelId, Soon)).StockKg);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task WeighIn_TenDifferentOnesAtOnce_AreAllBooked(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();

        await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => shop.WeighIn(heat, shop.SteelId, 10)));

        await using var db = shop.Db();
        Assert.Equal(10, await db.Weighings.CountAsync(Soon));
        Assert.Equal(4900, (await db.Materials.SingleAsync(m => m.Id == shop.SteelId, Soon)).StockKg);
        Assert.Equal(4900, await db.StockFacts.Where(s => s.MaterialId == shop.SteelId).SumAsync(s => s.Kg, Soon));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task ChangePrice_TwoPeopleFromTheSameVersion_OneIsTold(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await using var db = shop.Db();
        var seen = (await db.Materials.AsNoTracking().SingleAsync(m => m.Id == shop.SteelId, Soon)).Version;

        var outcomes = await Task.WhenAll(new[] { 310m, 320m }.Select(price =>
            Shop.Do(shop.Get<ChangePrice>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, shop.SteelId, seen, price))));

        Assert.Single(outcomes, o => o.Succeeded);
        Assert.Equal("version.stale", Assert.Single(outcomes.Single(o => !o.Succeeded).Findings).Code);
        Assert.Equal(2, await db.Prices.CountAsync(p => p.MaterialId == shop.SteelId, Soon)); // the first price and one change
    }

    [Fact]
    public async Task ChangePrice_StockMovedMeanwhile_IsNotStale()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await using var db = shop.Db();
        var seen = (await db.Materials.AsNoTracking().SingleAsync(m => m.Id == shop.SteelId, Soon)).Version;
        await shop.WeighIn(await shop.StartHeat(), shop.SteelId, 10);

        var outcome = await Shop.Do(shop.Get<ChangePrice>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, shop.SteelId, seen, 333));

        Assert.True(outcome.Succeeded);
        var material = await db.Materials.AsNoTracking().SingleAsync(m => m.Id == shop.SteelId, Soon);
        Assert.Equal((333m, 4990), (material.PricePerTonne, material.StockKg));
    }
}
