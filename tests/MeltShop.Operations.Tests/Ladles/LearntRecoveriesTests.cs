using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Storing;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Ladles;

/// <summary>Fillings whose samples show another recovery than the 50 % of the ladle, on both databases.</summary>
public sealed class LearntRecoveriesTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Recovery_OfTheFillings_IsTheOneThatTheirSamplesShowAndChangesNothing(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        Assert.Empty(await Learnt(shop));
        await Filling(shop, heat, 46);
        await Filling(shop, heat, 52);

        var learnt = Assert.Single(await Learnt(shop)).Value;
        Assert.Equal((2, 49.0, 46.0, 52.0), (
            learnt.Recovery.Count, Math.Round(learnt.Recovery.MeanPercent, 6), Math.Round(learnt.Recovery.LeastPercent, 6), Math.Round(learnt.Recovery.MostPercent, 6)));
        Assert.Equal(Math.Sqrt(18), learnt.Recovery.DeviationPercent!.Value, 6);
        await using var db = shop.Db();
        Assert.Equal(50, (await db.Ladles.SingleAsync(l => l.Id == shop.LadleId, Soon)).MgRecoveryPercent);
    }

    [Fact]
    public async Task Filling_ThatOtherIronCameInto_TeachesNothing()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        var first = await shop.Poured(heat, 600, ladleId: await shop.SecondLadle());
        var second = await shop.Poured(heat, 600);
        await Shop.Do(shop.Get<RecordRest>(), shop.Melter, new(Guid.NewGuid(), shop.Now, first.Id, RestWay.IntoLadle, second.Id, 100, null));
        await shop.Sample(heat, second, SampleKind.AfterTreatment, ("Mg", 0.042));

        Assert.Empty(await Learnt(shop));
    }

    private static async Task<IReadOnlyDictionary<long, LadleRecovery>> Learnt(Shop shop) => await shop.Get<LearntRecoveries>().Load(Soon);

    private static async Task Filling(Shop shop, Heat heat, double recoveryPercent)
    {
        var ladle = await shop.Poured(heat, 600);
        shop.Clock.Advance(3);
        await using var db = shop.Db();
        var card = await db.PocketCards.SingleAsync(c => c.TreatedLadleId == ladle.Id, Soon);
        var problem = StoredJson.Value<TreatmentProblem>(card.Problem!);
        var at = shop.Now;
        var iron = MagnesiumTreatment.After(problem with { Recipe = problem.Recipe with { MgRecoveryPercent = recoveryPercent } }, card.AlloyKg!.Value, 600);
        await Shop.Do(shop.Get<Operations.Laboratory.RecordSample>(), shop.Melter, new(
            Guid.NewGuid(), at, heat.Id, ladle.Id, SampleKind.AfterTreatment, [Shop.Burn(("Mg", iron.MgPercentAt((at - ladle.ReactionEndedAt!.Value).TotalMinutes)))]));
        await shop.Decide(shop.Melter, await shop.Treated(ladle.Id), CastingVerdict.Hold, null, "poured out");
    }
}
