using MeltShop.Operations.Grades;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Heats;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Correcting;

public sealed class JudgedAnewTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task HeatAsItStood_BeforeAWindowWasChanged_SaysThatItIsJudgedByWhatHoldsNow(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        await using var db = shop.Db();
        var version = (await db.Grades.SingleAsync(g => g.Id == shop.DuctileId, Soon)).Version;
        var before = shop.Now;

        Assert.Empty((await Shop.Do(shop.Get<ChangeWindow>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, shop.DuctileId, version, WindowStage.Furnace, "C", 3.5, 3.6, 3.7, 0.02))).Findings);

        Assert.True(await IsJudgedAnew(before));
        Assert.False(await IsJudgedAnew(shop.Now));
        Assert.False((await shop.Get<HeatPage>().Load(heat.Id, Soon))!.IsJudgedAnew);

        async Task<bool> IsJudgedAnew(DateTimeOffset at) => (await shop.Get<HeatPage>().LoadAsKnown(heat.Id, at, Soon))!.IsJudgedAnew;
    }
}
