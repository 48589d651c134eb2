using MeltShop.Operations.Heats;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Stories;

/// <summary>PostgreSQL lets two transactions read the same ledger at once; SQLite has one writer.</summary>
public sealed class TapsAtOnceTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Fact]
    public async Task TwoTaps_OfMoreThanThereIsTogether_OneIsRefused()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var heat = await shop.Bath();
        await shop.Poured(heat, 900); // so that neither tap changes the heat's own row, whose version would tell
        var second = (await Shop.Do(shop.Get<AddLadle>(), shop.Administrator, new(
            Guid.NewGuid(), shop.Now, "L2", "Ladle 2", "sandwich", 1100, 40, 50, null, 0.001, 5, "invented for a test"))).Value;
        TreatedLadle[] ladles = [await shop.Prepared(heat, 900), await Prepared(shop, shop.Pocket(heat, 900) with { LadleId = second })];

        // Whoever writes a line of the ledger waits for the furnace's row here; whoever only read the ledger has done so by then.
        await using var db = shop.Db();
        await using var gate = await db.Database.BeginTransactionAsync(Soon);
        await db.Database.ExecuteSqlAsync($"""SELECT 1 FROM "Furnaces" FOR UPDATE""", Soon);
        var taps = ladles.Select(l => shop.Get<RecordTap>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, l.Id, l.Version, 900, null), Soon)).ToList();
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        var outcomes = await Task.WhenAll(taps);
        Assert.Single(outcomes, o => o.Succeeded);
        Assert.Equal("furnace.short", outcomes.Single(o => !o.Succeeded).Findings[0].Code);
        Assert.True(await shop.InFurnace() > 0);
    }

    private static async Task<TreatedLadle> Prepared(Shop shop, PreparePocket.Command command) =>
        await shop.Treated((await Shop.Do(shop.Get<PreparePocket>(), shop.Melter, command)).Value.TreatedLadleId);
}
