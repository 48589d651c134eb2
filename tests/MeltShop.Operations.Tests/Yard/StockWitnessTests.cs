using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Yard;

public sealed class StockWitnessTests
{
    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Stock_ChangedBesideItsLedger_IsFound(RecordsProvider provider)
    {
        var soon = TestContext.Current.CancellationToken;
        await using var shop = await Shop.Open(provider);
        await shop.WeighIn(await shop.StartHeat(), shop.SteelId, 12.3);
        Assert.True((await shop.Get<TrailCheck>().Run(soon)).Holds);

        await using var db = shop.Db();
        await db.Materials.Where(m => m.Id == shop.SteelId).ExecuteUpdateAsync(set => set.SetProperty(m => m.StockKg, m => m.StockKg + 1), soon);

        var fault = Assert.Single((await shop.Get<TrailCheck>().Run(soon)).Faults);
        Assert.Equal(("row.changed", "Materials", "StockKg"), (fault.Code, fault.Table, fault.Column));
    }
}
