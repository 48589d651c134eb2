using MeltShop.Operations.Charging;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records.Reading.Charge;

namespace MeltShop.Operations.Tests.Charging;

/// <summary>The room for the cold charge is remembered at the furnace.</summary>
public sealed class FurnaceRoomTests(OneShop one) : IClassFixture<OneShop>
{
    private readonly Shop shop = one.Shop;

    [Fact]
    public async Task Room_OfTheFurnace_HoldsEveryPlanButOneThatSaysOtherwise()
    {
        Assert.True((await Set(null, 3.5)).Succeeded);
        var data = await shop.Get<ChargePage>().Load(TestContext.Current.CancellationToken);
        var choice = new ChargeChoice(shop.FurnaceId, shop.DuctileId, 2000, HeelKg: 0);

        Assert.Equal([(ChargeQuestion.FurnaceRoom, 3.5)], Rooms(choice));
        Assert.Equal([(ChargeQuestion.FurnaceRoom, 2)], Rooms(choice with { Wishes = new(FurnaceM3: 2) }));
        Assert.Equal(["version.stale"], (await Set(null, 4)).Findings.Select(finding => finding.Code));
        Assert.Equal(["wishes.furnaceM3"], (await Set(3.5, 0)).Findings.Select(finding => finding.Path));
        Assert.True((await Set(3.5, null)).Succeeded);
        data = await shop.Get<ChargePage>().Load(TestContext.Current.CancellationToken);
        Assert.Empty(Rooms(choice));

        IEnumerable<(string, double)> Rooms(ChargeChoice asked) => ChargeQuestion.Build(data, asked).Problem!.Volumes.Select(volume => (volume.Name, volume.MostM3));
    }

    private Task<Outcome<long>> Set(double? seen, double? room) =>
        shop.Get<SetFurnaceRoom>().Run(shop.Metallurgist, new(Guid.NewGuid(), shop.Now, shop.FurnaceId, seen, room), TestContext.Current.CancellationToken);
}
