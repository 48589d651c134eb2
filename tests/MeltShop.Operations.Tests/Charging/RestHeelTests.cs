using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Yard;

namespace MeltShop.Operations.Tests.Charging;

/// <summary>The heel that a charge stands on, where plan and ledger are not of one mind: the later word counts, and both are told.</summary>
public sealed class RestHeelTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Heel_GuessedWhileAnotherHeatWasIn_IsTheOneThatTheHeatLeftWithItsAnalysis(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var before = await shop.Bath();
        var left = await shop.InFurnace();
        var plan = await Planned(shop, heelKg: 300);
        shop.Clock.Advance(600);
        Assert.True((await shop.Close(before, left - 700)).Succeeded);
        shop.Clock.Advance(600);
        var rest = (await Rest(shop, await Started(shop, plan)))!;

        var heel = rest.Heel!;
        Assert.Equal((300, 700, 700), (heel.PlannedKg, Math.Round(heel.LedgerKg, 6), Math.Round(heel.Metal.Kg, 6)));
        Assert.True(heel is { Differs: true, IsOther: true });
        Assert.Equal(3.65, heel.Metal.Percent(Element.C), 1e-9);
        // Nothing is weighed in yet, and the masses are not those of the plan: 1300 kg are to come, and not 1700.
        Assert.Equal(RestStanding.Kept, rest.Standing);
        Assert.InRange(rest.LiquidKg!.Value, 2000 - 1e-6, 2020 + 1e-6);
        Assert.InRange(rest.Lines!.Sum(line => line.Kg), 1300, 1400);
    }

    [Fact]
    public async Task Heel_SaidByAPersonBesideTheLedger_StaysAndTheLargerOneIsHeldAgainstTheFurnace()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await Dip(shop, 400);
        var rest = (await Rest(shop, await Started(shop, await Planned(shop, heelKg: 200))))!;

        Assert.Equal((200, 400, 200), (rest.Heel!.PlannedKg, rest.Heel.LedgerKg, rest.Heel.Metal.Kg));
        Assert.True(rest.Heel is { Differs: true, IsOther: false });
        Assert.Equal(rest.LiquidKg!.Value + 200, rest.MostLiquidKg!.Value, 1e-9);
    }

    [Fact]
    public async Task Heel_DippedInTheHeat_IsWhatTheDipShows()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await Dip(shop, 400);
        var heat = await Started(shop, await Planned(shop, heelKg: 200));
        shop.Clock.Advance(60);
        await Dip(shop, 250);
        var rest = (await Rest(shop, heat))!;

        Assert.Equal((200, 250, 250), (rest.Heel!.PlannedKg, rest.Heel.LedgerKg, rest.Heel.Metal.Kg));
    }

    [Fact]
    public async Task Heel_DippedWhereThePersonWasRight_LeavesThePlanAsItIs()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await Dip(shop, 400);
        var heat = await Started(shop, await Planned(shop, heelKg: 200));
        shop.Clock.Advance(60);
        await Dip(shop, 200);

        Assert.Null(await Rest(shop, heat));
    }

    [Fact]
    public async Task Heel_DrainedAfterThePlan_IsNoHeelAnyMore()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await Dip(shop, 400);
        var plan = await Planned(shop, heelKg: null);
        shop.Clock.Advance(60);
        await Dip(shop, 0);
        var rest = (await Rest(shop, await Started(shop, plan)))!;

        Assert.Equal((400, 0, 0), (rest.Heel!.PlannedKg, rest.Heel.LedgerKg, rest.Heel.Metal.Kg));
        Assert.InRange(rest.LiquidKg!.Value, 2000 - 1e-6, 2020 + 1e-6);
    }

    [Fact]
    public async Task Heel_DippedInAHalfMoltenCharge_IsToldAndNotReckonedWith()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await Dip(shop, 400);
        var heat = await Started(shop, await Planned(shop, heelKg: null));
        shop.Clock.Advance(60);
        await shop.WeighIn(heat, shop.PigIronId, 500);
        shop.Clock.Advance(60);
        // The ledger counts all that was charged; a bar finds what has melted.
        await Dip(shop, 600);
        var heel = (await Rest(shop, heat))!.Heel!;

        Assert.Equal((400, 400), (heel.PlannedKg, heel.Metal.Kg));
        Assert.InRange(heel.LedgerKg, 100, 130);
        Assert.True(heel.Differs);
    }

    [Fact]
    public async Task Heel_AsThePlanHasIt_LeavesThePlanAsItIs()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await Dip(shop, 400);

        Assert.Null(await Rest(shop, await Started(shop, await Planned(shop, heelKg: null))));
    }

    private static async Task<long> Planned(Shop shop, double? heelKg) => (await Shop.Do(
        shop.Get<PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, new ChargeChoice(shop.FurnaceId, shop.DuctileId, 2000, HeelKg: heelKg)))).Value.PlanId;

    private static async Task<Heat> Started(Shop shop, long planId) =>
        await shop.Heat((await Shop.Do(shop.Get<StartHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, planId))).Value.HeatId);

    private static Task<Outcome<double>> Dip(Shop shop, double kg) =>
        Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.FurnaceId, kg, null, "dipped with a bar"));

    private static async Task<RestAnswer?> Rest(Shop shop, Heat heat) => RestQuestion.Answer(
        (await shop.Get<HeatPage>().Load(heat.Id, Soon))!, (await shop.Get<YardPage>().Load(null, Soon)).Materials, Soon);
}
