using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Correcting;

public sealed class CorrectionRefusalTests : IAsyncLifetime
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
    public async Task Correction_BySomebodyElseMeanwhile_SaysWhoWhenAndWhy()
    {
        var id = await shop.WeighIn(heat, shop.SteelId, 54);
        await Weighing(id, 45, shop.Metallurgist);

        var findings = await shop.Refuses(shop.Get<CorrectWeighing>(), shop.Melter, Of(id, 46), "weighingId", "fact.corrected");

        Assert.Equal("The metallurgist", findings[0].Arguments[0]);
        Assert.Equal("digits swapped", findings[0].Arguments[2]);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Correction_TwoAtOnce_OneIsDoneAndOneIsTold(RecordsProvider provider)
    {
        await using var other = await Shop.Open(provider);
        var started = await other.StartHeat();
        var id = await other.WeighIn(started, other.SteelId, 54);

        var outcomes = await Task.WhenAll(Enumerable.Range(1, 4).Select(n => other.Get<CorrectWeighing>().Run(
            other.Melter, new(Guid.NewGuid(), other.Now, id, started.Id, other.SteelId, 40 + n, false, "digits swapped"), Soon)));

        Assert.Single(outcomes, o => o.Succeeded);
        Assert.All(outcomes.Where(o => !o.Succeeded), o => Assert.Contains(o.Findings[0].Code, new[] { "fact.corrected", "unique.taken" }));
        await using var db = other.Db();
        Assert.Equal(2, await db.Weighings.CountAsync(Soon));
        Assert.Equal(2, await db.FurnaceMetals.CountAsync(Soon));
    }

    [Fact]
    public async Task Correction_WrongInput_IsRefusedAtItsField()
    {
        var id = await shop.WeighIn(heat, shop.SteelId, 54);

        await shop.Refuses(shop.Get<CorrectWeighing>(), shop.Melter, Of(id, 45) with { Reason = " " }, "reason", "text.missing");
        await shop.Refuses(shop.Get<CorrectWeighing>(), shop.Melter, Of(id, -1), "kg", "mass.negative");
        await shop.Refuses(shop.Get<CorrectWeighing>(), shop.Melter, Of(id, 3751), "kg", "weighing.overFurnace");
        await shop.Refuses(shop.Get<CorrectWeighing>(), shop.Melter, Of(id, 45) with { HappenedAt = heat.StartedAt.AddMinutes(-10.1) }, "happenedAt", "time.beforeHeat");
        await shop.Refuses(shop.Get<CorrectWeighing>(), shop.Melter, Of(id, 54), "", "correction.nothing");
        await shop.Refuses(shop.Get<CorrectWeighing>(), shop.Melter, Of(4711, 54), "weighingId", "fact.unknown");
        await shop.Refuses(shop.Get<CorrectWeighing>(), shop.Melter, Of(id, 45) with { HeatId = 4711 }, "heatId", "heat.unknown");
        await shop.Refuses(shop.Get<CorrectWeighing>(), shop.Melter, Of(id, 45) with { MaterialId = 4711 }, "materialId", "material.unknown");
        await shop.Refuses(shop.Get<CorrectWeighing>(), shop.Melter, Of(id, 45) with { HappenedAt = shop.Now.AddMinutes(3) }, "happenedAt", "time.future");
        await shop.Refuses(shop.Get<CorrectWeighing>(), shop.Inspector, Of(id, 45), "", "right.missing");
    }

    [Fact]
    public async Task Sample_WrongInput_IsRefusedAtItsField()
    {
        var prepared = await shop.Prepared(heat, 700);
        var id = await shop.Sample(heat, SampleKind.Bath, ("C", 3.6));
        CorrectSample.Command Command(SampleKind kind, long? ladleId) => new(Guid.NewGuid(), shop.Now, id, heat.Id, ladleId, kind, null, null, null, "wrong ladle");

        await shop.Refuses(shop.Get<CorrectSample>(), shop.Melter, Command(SampleKind.LastMetal, null), "treatedLadleId", "sample.ladleMissing");
        await shop.Refuses(shop.Get<CorrectSample>(), shop.Melter, Command(SampleKind.Bath, 1), "treatedLadleId", "sample.notOfLadle");
        await shop.Refuses(shop.Get<CorrectSample>(), shop.Melter, Command(SampleKind.LastMetal, 4711), "treatedLadleId", "ladle.unknown");
        await shop.Refuses(shop.Get<CorrectSample>(), shop.Melter, Command(SampleKind.Bath, null), "", "correction.nothing");
        await shop.Refuses(shop.Get<CorrectSample>(), shop.Melter, Command(SampleKind.LastMetal, prepared.Id), "treatedLadleId", "state.wrong");
    }

    [Fact]
    public async Task BurnOfACorrectedSample_CannotBeSetAside()
    {
        var id = await shop.Sample(heat, SampleKind.Bath, ("C", 3.6));
        await Shop.Do(shop.Get<SetBurnAside>(), shop.Inspector, new(Guid.NewGuid(), shop.Now, id, 2, "crack in the coin"));
        var right = (await Shop.Do(shop.Get<CorrectSample>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, heat.Id, null, SampleKind.Bath, null, "9", null, "its number"))).Value;

        await shop.Refuses(shop.Get<SetBurnAside>(), shop.Inspector, new(Guid.NewGuid(), shop.Now, id, 1, "crack"), "sampleId", "fact.corrected");
        await using var db = shop.Db();
        Assert.Equal([false, true, false], await db.Burns.Where(b => b.SampleId == right).OrderBy(b => b.Ordinal).Select(b => b.SetAside).ToListAsync(Soon));
    }

    [Fact]
    public async Task LineOfAWeighing_IsCorrectedAtTheWeighing()
    {
        await shop.WeighIn(heat, shop.SteelId, 54);
        await using var db = shop.Db();
        var (line, stock) = (await db.FurnaceMetals.OrderBy(m => m.Id).LastAsync(Soon), await db.StockFacts.OrderBy(s => s.Id).LastAsync(Soon));

        await shop.Refuses(shop.Get<CorrectMetal>(), shop.Melter, new(Guid.NewGuid(), shop.Now, line.Id, 1, null, "no"), "lineId", "correction.elsewhere");
        await shop.Refuses(shop.Get<CorrectStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, stock.Id, 1, "no"), "stockFactId", "correction.elsewhere");
    }

    [Fact]
    public async Task Decision_ThatIsNotTheLast_IsNotCorrected()
    {
        var ladle = await shop.Poured(heat, 700);
        await shop.Decide(shop.Inspector, ladle, CastingVerdict.Hold, null, "wait");
        await using var db = shop.Db();
        var first = await db.CastingDecisions.SingleAsync(Soon);
        await shop.Decide(shop.Inspector, await shop.Treated(ladle.Id), CastingVerdict.Scrap, null, "run-out");

        await shop.Refuses(shop.Get<CorrectDecision>(), shop.Inspector, new(Guid.NewGuid(), shop.Now, first.Id, CastingVerdict.Scrap, null, "wrong button"), "decisionId", "decision.notTheLast");
        await shop.Refuses(shop.Get<CorrectDecision>(), shop.Melter, new(Guid.NewGuid(), shop.Now, first.Id, CastingVerdict.Scrap, null, "wrong button"), "", "right.missing");
    }

    private CorrectWeighing.Command Of(long id, double kg) => new(Guid.NewGuid(), shop.Now, id, heat.Id, shop.SteelId, kg, false, "digits swapped");

    private Task<Outcome<long>> Weighing(long id, double kg, Acting who) => Shop.Do(shop.Get<CorrectWeighing>(), who, Of(id, kg));
}
