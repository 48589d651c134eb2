using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Tests.Correcting;

/// <summary>Whatever is recorded of a heat is corrected three times: every value, person, time and reason stays readable.</summary>
public sealed class ThreeTimesTests
{
    private static readonly string[] Reasons = ["digits swapped", "wrong card", "asked the crane driver"];

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Weighing_CorrectedThreeTimes_KeepsEveryValue(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        shop.Clock.Advance(30);
        var heat = await shop.StartHeat();
        var id = await shop.WeighIn(heat, shop.SteelId, 540);
        (double Kg, long Material, bool IntoBath, int Minutes)[] changes = [(450, shop.SteelId, false, 0), (450, shop.PigIronId, false, 0), (455, shop.PigIronId, true, 7)];
        var first = (await View(shop, heat)).Weighings[0].Origin;
        await Three(shop, async (n, who, reason) => id = (await Shop.Do(shop.Get<CorrectWeighing>(), who, new(
            Guid.NewGuid(), shop.Now, id, heat.Id, changes[n].Material, changes[n].Kg, changes[n].IntoBath, reason, first.ObservedAt.AddMinutes(-changes[n].Minutes)))).Value);

        var chain = Chain((await View(shop, heat)).Weighings, w => w.Origin);
        Assert.Equal([(540d, "steel", false), (450, "steel", false), (450, "pig", false), (455, "pig", true)], chain.Select(w => (w.Kg, w.MaterialCode, w.IntoBath)));
        Assert.Equal([0, 0, 0, -7], chain.Select(w => (w.Origin.ObservedAt - first.ObservedAt).TotalMinutes));
        AllTold(chain.Select(w => w.Origin));
        await Holds(shop, 455 * 0.98, [(shop.SteelId, 5000), (shop.PigIronId, 4545)]);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Temperature_CorrectedThreeTimes_KeepsEveryValue(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat);
        var id = (await Shop.Do(shop.Get<RecordTemperature>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, null, 1487))).Value;
        (double C, long? Ladle)[] changes = [(1478, null), (1478, ladle.Id), (1468, ladle.Id)];
        await Three(shop, async (n, who, reason) => id = (await Shop.Do(shop.Get<CorrectTemperature>(), who, new(
            Guid.NewGuid(), shop.Now, id, heat.Id, changes[n].Ladle, changes[n].C, reason))).Value);

        var chain = Chain((await View(shop, heat)).Temperatures, t => t.Origin);
        Assert.Equal([(1487d, (long?)null), (1478, null), (1478, ladle.Id), (1468, ladle.Id)], chain.Select(t => (t.TemperatureC, t.TreatedLadleId)));
        AllTold(chain.Select(t => t.Origin));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Sample_CorrectedThreeTimes_KeepsEveryValue(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        var id = await shop.Sample(heat, SampleKind.Bath, ("C", 3.56), ("Si", 1.5));
        await Three(shop, async (n, who, reason) => id = (await Shop.Do(shop.Get<CorrectSample>(), who, new(
            Guid.NewGuid(), shop.Now, id, heat.Id, null, n < 2 ? SampleKind.Bath : SampleKind.AfterCorrection,
            n == 0 ? [Shop.Burn(("C", 3.65), ("Si", 1.5)), Shop.Burn(("C", 3.67), ("Si", 1.5))] : null, n < 1 ? null : "17", n < 2 ? null : "after the silicon", reason))).Value);

        var chain = Chain((await View(shop, heat)).Samples, s => s.Origin);
        Assert.Equal([3.56, 3.66, 3.66, 3.66], chain.Select(s => Math.Round(s.Mean(Metallurgy.Elements.Element.C)!.Value, 9)));
        Assert.Equal(["3.65", "3.67"], chain[3].Burns.Select(b => b.Readings[0].InstrumentText));
        Assert.Equal([(SampleKind.Bath, null, null), (SampleKind.Bath, null, null), (SampleKind.Bath, "17", null), (SampleKind.AfterCorrection, "17", "after the silicon")],
            chain.Select(s => (s.Kind, s.CoinNumber, s.Remarks)));
        AllTold(chain.Select(s => s.Origin));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task TapDipAndDecision_CorrectedThreeTimes_KeepEveryValue(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat);
        shop.Clock.Advance(1);
        await Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.FurnaceId, 1000, null, "dipped", 40));
        await shop.Decide(shop.Inspector, ladle, CastingVerdict.Scrap, null, "run-out");
        var view = await View(shop, heat);
        var (tap, dip, decision) = (view.Ladles[0].Tap!.Origin.FactId, Dips(view)[0].Origin.FactId, view.Ladles[0].Decision!.Origin.FactId);
        await Three(shop, async (n, who, reason) =>
        {
            tap = (await Shop.Do(shop.Get<CorrectTap>(), who, new(Guid.NewGuid(), shop.Now, tap, 890 - n, n < 2 ? null : 1470, reason))).Value;
            view = await View(shop, heat);
            dip = Dips(view).Single(d => !d.Origin.IsCorrected).Origin.FactId; // it took up what the tap was off
            dip = (await Shop.Do(shop.Get<CorrectMetal>(), who, new(Guid.NewGuid(), shop.Now, dip, 1010 + n, 30 + n, reason))).Value;
            decision = (await Shop.Do(shop.Get<CorrectDecision>(), shop.Inspector, new(
                Guid.NewGuid(), shop.Now, decision, n == 1 ? CastingVerdict.Scrap : CastingVerdict.Hold, null, reason))).Value;
        });

        view = await View(shop, heat);
        Assert.Equal([900d, 890, 889, 888], Chain(view.Ladles[0].Taps, t => t.Origin).Select(t => t.Kg));
        AllTold(Chain(view.Ladles[0].Taps, t => t.Origin).Select(t => t.Origin));
        Assert.Equal([CastingVerdict.Scrap, CastingVerdict.Hold, CastingVerdict.Scrap, CastingVerdict.Hold], Chain(view.Ladles[0].Decisions, d => d.Origin).Select(d => d.Verdict));
        Assert.Equal([1000d, 1010, 1011, 1012], Dips(view).Select(d => d.LevelKg!.Value).Distinct());
        Assert.Equal([40d, 30, 31, 32], Dips(view).Select(d => d.PlusMinusKg!.Value).Distinct());
        Assert.Equal(1012, await shop.InFurnace(), 6);
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    private static async Task Three(Shop shop, Func<int, Acting, string, Task> correct)
    {
        Acting[] people = [shop.Melter, shop.Metallurgist, shop.Melter];
        for (var n = 0; n < 3; n++)
        {
            shop.Clock.Advance(10);
            await correct(n, people[n], Reasons[n]);
        }
    }

    private static async Task<HeatView> View(Shop shop, Heat heat) => (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;

    private static List<MetalView> Dips(HeatView view) => [.. view.Metal.Where(m => m.Kind == FurnaceMetalKind.Dipped).OrderBy(m => m.Origin.FactId)];

    /// <summary>The facts from the first to the one in force, each corrected by the next.</summary>
    private static List<TView> Chain<TView>(IEnumerable<TView> views, Func<TView, Origin> origin)
    {
        var all = views.ToList();
        var chain = new List<TView> { all.Single(v => origin(v).CorrectsId is null) };
        while (origin(chain[^1]).CorrectedBy is { } next) chain.Add(all.Single(v => origin(v).FactId == next.FactId));
        Assert.Equal(4, chain.Count);
        return chain;
    }

    private static void AllTold(IEnumerable<Origin> chain)
    {
        var origins = chain.ToList();
        Assert.Equal(Reasons, origins.Skip(1).Select(o => o.Reason));
        Assert.Equal(["The melter", "The melter", "The metallurgist", "The melter"], origins.Select(o => o.Person));
        Assert.Equal(["The melter", "The metallurgist", "The melter"], origins.Take(3).Select(o => o.CorrectedBy!.Person));
        Assert.Equal(Reasons, origins.Take(3).Select(o => o.CorrectedBy!.Reason));
        Assert.Equal(origins.Skip(1).Select(o => o.EnteredAt), origins.Take(3).Select(o => o.CorrectedBy!.EnteredAt));
        Assert.All(origins.Zip(origins.Skip(1)), pair => Assert.True(pair.Second.EnteredAt > pair.First.EnteredAt));
    }

    private static async Task Holds(Shop shop, double inFurnaceKg, (long MaterialId, double Kg)[] stocks)
    {
        Assert.Equal(inFurnaceKg, await shop.InFurnace(), 6);
        await using var db = shop.Db();
        foreach (var (id, kg) in stocks) Assert.Equal(kg, db.Materials.Single(m => m.Id == id).StockKg!.Value, 6);
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }
}
