using MeltShop.Operations.Heats;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Yard;

/// <summary>A material of which nobody knows how much becomes metal, on both databases.</summary>
public sealed class TellYieldTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Material_WhoseYieldIsUnknown_IsWeighedInOnlyOnceItIsSaid(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var id = await Turnings(shop);
        var heat = await shop.Bath();
        var weigh = new WeighIn.Command(Guid.NewGuid(), shop.Now, heat.Id, id, 40, true);
        var finding = Assert.Single(await shop.Refuses(shop.Get<WeighIn>(), shop.Melter, weigh, "materialId", "material.noYield"));
        Assert.Equal(["Turnings"], finding.Arguments);

        await Shop.Do(shop.Get<TellYield>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id, 82.5));
        var weighed = await Shop.Do(shop.Get<WeighIn>(), shop.Melter, weigh with { EntryKey = Guid.NewGuid() });

        await using var db = shop.Db();
        var key = (await db.Weighings.SingleAsync(w => w.Id == weighed.Value, Soon)).EntryKey;
        Assert.Equal(33, (await db.FurnaceMetals.SingleAsync(m => m.EntryKey == key, Soon)).Kg, 9); // 82.5 % of 40 kg
    }

    [Fact]
    public async Task Yield_ThatIsKnown_IsNotChanged()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var id = await Turnings(shop);
        await shop.Refuses(shop.Get<TellYield>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id, 0), "metallicYieldPercent", "yield.zero");
        await shop.Refuses(shop.Get<TellYield>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id, 101), "metallicYieldPercent", "percent.over100");
        await shop.Refuses(shop.Get<TellYield>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, 999, 90), "materialId", "material.unknown");
        await Shop.Do(shop.Get<TellYield>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id, 82.5));

        var known = await shop.Refuses(shop.Get<TellYield>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id, 90), "metallicYieldPercent", "yield.known");
        Assert.Equal([82.5], Assert.Single(known).Arguments);
    }

    private static async Task<long> Turnings(Shop shop) => (await Shop.Do(shop.Get<AddMaterial>(), shop.Metallurgist, new(
        Guid.NewGuid(), shop.Now, "turnings", "Turnings", MaterialKind.SteelScrap, MaterialUses.Charge | MaterialUses.BathAddition, 90, null,
        [new("C", 0.3)], "invented for a test", "memory"))).Value;
}
