using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Correcting;

/// <summary>What a heat left in its furnace follows what is corrected about the heat after its end, and the next plan says so.</summary>
public sealed class LeftHeelTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Sample_CorrectedAfterTheEnd_CorrectsTheHeelAndMarksThePlanMadeOfIt(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        await shop.Close(heat);
        var was = await Heel(shop);
        var next = await shop.StartHeat();
        var burn = Shop.Burn(("C", 3.45), ("Si", 1.5), ("Mn", 0.3), ("S", 0.012));

        await Done(shop, shop.Get<CorrectSample>(), new(
            Guid.NewGuid(), shop.Now, was.SampleId!.Value, heat.Id, null, SampleKind.Bath, [burn, burn, burn], null, null, "digits swapped"));

        var now = await Heel(shop);
        Assert.Equal((was.Id, "digits swapped", was.ObservedAt, was.Kg, (long?)heat.Id), (now.SupersedesId!.Value, now.Reason, now.ObservedAt, now.Kg, now.FromHeatId));
        Assert.Equal((3.45, 1.5), (Percent(now, Element.C)!.Value, Percent(now, Element.Si)!.Value));
        Assert.NotEqual(was.SampleId, now.SampleId);
        var note = Assert.Single((await shop.Get<HeatPage>().Load(next.Id, Soon))!.Plan.Stale);
        Assert.Equal((StaleKind.Heel, "digits swapped"), (note.Kind, note.Reason));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Burn_SetAsideAfterTheEnd_CorrectsTheHeel(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var (high, low) = (Shop.Burn(("C", 3.7), ("Si", 1.5)), Shop.Burn(("C", 3.5), ("Si", 1.5)));
        var sample = await Done(shop, shop.Get<RecordSample>(), new(Guid.NewGuid(), shop.Now, heat.Id, null, SampleKind.Bath, [high, low]));
        await shop.Close(await shop.Heat(heat.Id));
        Assert.Equal(3.6, Percent(await Heel(shop), Element.C)!.Value, 9);

        Assert.True((await Shop.Do(shop.Get<SetBurnAside>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, sample, 1, "cracked burn"))).Succeeded);

        Assert.Equal((3.5, "cracked burn"), (Percent(await Heel(shop), Element.C)!.Value, (await Heel(shop)).Reason));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Weighing_CorrectedAfterTheEnd_CorrectsTheHeelAndMarksThePlanMadeOfIt(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        await shop.Poured(heat, 900);
        var rest = await shop.InFurnace();
        shop.Clock.Advance(5);
        var weighing = await shop.WeighIn(heat, shop.SteelId, 500, intoBath: true);
        await shop.Close(await shop.Heat(heat.Id));
        var next = await shop.StartHeat();
        var known = shop.Now;
        shop.Clock.Advance(1);

        await Done(shop, shop.Get<CorrectWeighing>(), new(Guid.NewGuid(), shop.Now, weighing, heat.Id, shop.SteelId, 300, true, "the scale's other line"));

        // 97 % of 300 kg steel with 0.2 % Si melted into the bath with 1.5 % Si.
        var heel = await Heel(shop);
        Assert.Equal(rest + 291, heel.Kg, 6);
        Assert.Equal((rest * 1.5 + 291 * 0.2) / (rest + 291), Percent(heel, Element.Si)!.Value, 6);
        var note = Assert.Single((await shop.Get<HeatPage>().Load(next.Id, Soon))!.Plan.Stale);
        Assert.Equal((StaleKind.Heel, "the scale's other line"), (note.Kind, note.Reason));

        // And the heat that started over it has the heel that the ledger has, says why, and what it was.
        var view = (await shop.Get<HeatPage>().Load(next.Id, Soon))!;
        Assert.Equal(rest + 291, view.Heat.HeelKg, 6);
        var said = Assert.Single(view.OfItself);
        Assert.Equal((Math.Round(rest + 485, 6), Math.Round(rest + 291, 6), "the scale's other line"), (Math.Round(said.FormerHeelKg!.Value, 6), Math.Round(said.HeelKg!.Value, 6), said.Origin.Reason));
        Assert.Equal(rest + 485, (await shop.Get<HeatPage>().LoadAsKnown(next.Id, known, Soon))!.Heat.HeelKg, 6);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Weighing_CorrectedThreeHeatsLater_IsFollowedByEachHeelUntilSomebodyDipped(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heats = new List<Heat>();
        var weighings = new List<long>();
        for (var n = 0; n < 4; n++)
        {
            shop.Clock.Advance(5);
            if (n == 3) await Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.FurnaceId, 900, null, "load cell"));
            shop.Clock.Advance(5);
            heats.Add(await shop.StartHeat());
            weighings.Add(await shop.WeighIn(heats[n], shop.SteelId, 300));
            shop.Clock.Advance(1);
            await shop.Sample(heats[n], SampleKind.Bath, ("C", 3.6), ("Si", 1.5));
            shop.Clock.Advance(1);
            weighings.Add(await shop.WeighIn(heats[n], shop.SteelId, 100, intoBath: true));
            await shop.Close(await shop.Heat(heats[n].Id));
        }

        // 97 % of steel melts in: heats of 0, 388 and 776 kg; 100 kg less in the first leave 97 kg less in each, and the dip shows 900 whatever stood before.
        await Done(shop, shop.Get<CorrectWeighing>(), new(Guid.NewGuid(), shop.Now, weighings[0], heats[0].Id, shop.SteelId, 200, false, "the scale's other line"));
        await Heels(shop, heats, [0, 291, 679, 900], [291, 679, 900, 1067, 1288]);
        var said = Assert.Single((await shop.Get<HeatPage>().Load(heats[2].Id, Soon))!.OfItself);
        Assert.Equal((776d, 679d, "the scale's other line"), (Math.Round(said.FormerHeelKg!.Value, 6), Math.Round(said.HeelKg!.Value, 6), said.Origin.Reason));
        Assert.Empty((await shop.Get<HeatPage>().Load(heats[3].Id, Soon))!.OfItself);
        await using var db = shop.Db();
        var third = await db.InForce<Heel>().Include(h => h.Percents).SingleAsync(h => h.FromHeatId == heats[2].Id && h.Kg > 1000, Soon); // the other one is that of the dip
        Assert.Equal((970 * 1.5 + 97 * 0.2) / 1067, Percent(third, Element.Si)!.Value, 6); // what was sampled, and the 97 kg of steel after it

        // Moved to the second heat it is missing in the first heel only.
        var standing = await db.InForce<Weighing>().Where(w => w.HeatId == heats[0].Id && !w.IntoBath).Select(w => w.Id).SingleAsync(Soon);
        await Done(shop, shop.Get<CorrectWeighing>(), new(Guid.NewGuid(), shop.Now, standing, heats[1].Id, shop.SteelId, 200, false, "wrong heat", (await shop.Heat(heats[1].Id)).StartedAt.AddSeconds(1)));
        await Heels(shop, heats, [0, 97, 679, 900], [97, 679, 900, 1067, 1288]);
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    /// <summary>What the heats started over, and what they left, from the least to the most, kg.</summary>
    private static async Task Heels(Shop shop, List<Heat> heats, double[] atTheStart, double[] left)
    {
        await using var db = shop.Db();
        var ids = heats.Select(h => h.Id).ToList();
        Assert.Equal(atTheStart, (await db.Heats.AsNoTracking().Where(h => ids.Contains(h.Id)).OrderBy(h => h.Id).Select(h => h.HeelKg).ToListAsync(Soon)).Select(kg => Math.Round(kg, 6)));
        Assert.Equal(left, (await db.InForce<Heel>().Select(h => h.Kg).ToListAsync(Soon)).Select(kg => Math.Round(kg, 6)).Order());
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Dip_BeforeTheNextHeat_TakesUpWhatIsCorrectedAndIsFollowedWhereItIsCorrected(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        var weighing = await shop.WeighIn(heat, shop.SteelId, 500);
        await shop.Sample(heat, SampleKind.Bath, ("C", 3.6), ("Si", 1.5));
        await shop.Close(await shop.Heat(heat.Id));
        shop.Clock.Advance(5);
        await Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.FurnaceId, 480, null, "load cell"));
        shop.Clock.Advance(5);
        var next = await shop.StartHeat();

        await Done(shop, shop.Get<CorrectWeighing>(), new(Guid.NewGuid(), shop.Now, weighing, heat.Id, shop.SteelId, 300, false, "the scale's other line"));
        Assert.Equal(480, (await shop.Heat(next.Id)).HeelKg, 6);

        await using var db = shop.Db();
        var dip = await db.InForce<FurnaceMetal>().SingleAsync(m => m.Kind == FurnaceMetalKind.Dipped, Soon);
        await Done(shop, shop.Get<CorrectMetal>(), new(Guid.NewGuid(), shop.Now, dip.Id, 450, null, "read again"));
        Assert.Equal((450d, 450d), (Math.Round((await shop.Heat(next.Id)).HeelKg, 6), Math.Round(await shop.InFurnace(), 6)));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task BathSample_MovedAwayAfterTheEnd_LeavesAHeelThatNobodyKnows(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        await shop.Close(heat);
        var was = await Heel(shop);
        var next = await shop.StartHeat();
        var now = shop.Now;

        await Done(shop, shop.Get<CorrectSample>(), new(
            Guid.NewGuid(), now, was.SampleId!.Value, next.Id, null, SampleKind.Bath, null, null, null, "coin of the next heat", now));

        var heel = await Heel(shop);
        Assert.Equal((was.Kg, (long?)null), (heel.Kg, heel.SampleId));
        Assert.Empty(heel.Percents);
    }

    [Fact]
    public async Task MetalAndTapOfAnEndedHeat_Corrected_CorrectTheHeel()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        await shop.Poured(heat, 900);
        shop.Clock.Advance(5);
        await Done(shop, shop.Get<PourBack>(), new(Guid.NewGuid(), shop.Now, heat.Id, null, 200, new Dictionary<string, double> { ["C"] = 3.4, ["Si"] = 2.5 }, "rest"));
        await shop.Close(await shop.Heat(heat.Id));
        var was = await Heel(shop);
        await using var db = shop.Db();
        var back = await db.FurnaceMetals.SingleAsync(m => m.Kind == FurnaceMetalKind.PouredBack, Soon);
        var tap = await db.Taps.SingleAsync(Soon);

        await Done(shop, shop.Get<CorrectMetal>(), new(Guid.NewGuid(), shop.Now, back.Id, 100, null, "half of it"));
        var half = await Heel(shop);
        Assert.Equal(was.Kg - 100, half.Kg, 6);
        Assert.Equal(((was.Kg - 200) * 1.5 + 100 * 2.5) / (was.Kg - 100), Percent(half, Element.Si)!.Value, 6);

        await Done(shop, shop.Get<CorrectTap>(), new(Guid.NewGuid(), shop.Now, tap.Id, 800, null, "scale"));
        Assert.Equal(was.Kg, (await Heel(shop)).Kg, 6);

        // More than there was cannot have been tapped: what the ledger then says of the heel is told as it is.
        tap = await shop.Db().Taps.OrderBy(t => t.Id).LastAsync(Soon);
        await Done(shop, shop.Get<CorrectTap>(), new(Guid.NewGuid(), shop.Now, tap.Id, 900 + was.Kg, null, "scale"));
        var less = await Heel(shop);
        Assert.Equal(-100, less.Kg, 6);
        Assert.Empty(less.Percents);
    }

    [Fact]
    public async Task Weighing_CorrectedLongAfterTheEnd_IsFollowedOverAHundredHeatsAndNoMore()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        await shop.Poured(heat, 900);
        shop.Clock.Advance(5);
        var weighing = await shop.WeighIn(heat, shop.SteelId, 500, intoBath: true);
        shop.Clock.Advance(5);
        await shop.Close(await shop.Heat(heat.Id));
        var next = await shop.StartHeat();
        await using var db = shop.Db();
        var columns = string.Join(", ", db.Model.FindEntityType(typeof(Heat))!.GetProperties()
            .Where(p => p.Name is not (nameof(Heat.Id) or nameof(Heat.Number))).Select(p => $"\"{p.GetColumnName()}\""));
        // A hundred more that started over the same heel and ended at once, without a dip.
        await db.Heats.Where(h => h.Id == next.Id).ExecuteUpdateAsync(set => set.SetProperty(h => h.ClosedAt, h => h.StartedAt).SetProperty(h => h.State, HeatState.Closed), Soon);
#pragma warning disable EF1002 // columns of the model
        foreach (var number in Enumerable.Range(1, 100))
            await db.Database.ExecuteSqlRawAsync($$"""INSERT INTO "Heats" ("Number", {{columns}}) SELECT "Number" || '-' || {0}, {{columns}} FROM "Heats" WHERE "Id" = {1}""", [number, next.Id], Soon);
#pragma warning restore EF1002

        await Done(shop, shop.Get<CorrectWeighing>(), new(Guid.NewGuid(), shop.Now, weighing, heat.Id, shop.SteelId, 300, true, "the scale's other line"));

        var changes = await shop.Db().Heats.Where(h => h.Id >= next.Id).OrderBy(h => h.Id).Select(h => h.HeelKg - next.HeelKg).ToListAsync(Soon);
        Assert.Equal([.. Enumerable.Repeat(-194d, 100), 0], changes.Select(kg => Math.Round(kg, 6)));
    }

    [Fact]
    public async Task BathSample_ThatArrivesAfterTheEnd_BringsItsAnalysis()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        shop.Clock.Advance(5);
        var taken = shop.Now;
        shop.Clock.Advance(5);
        await shop.Close(heat);

        await Done(shop, shop.Get<RecordSample>(), new(Guid.NewGuid(), taken, heat.Id, null, SampleKind.AfterCorrection, [Shop.Burn(("C", 3.5), ("Si", 1.6))]));

        Assert.Equal((3.5, 1.6), (Percent(await Heel(shop), Element.C)!.Value, Percent(await Heel(shop), Element.Si)!.Value));
    }

    [Fact]
    public async Task Sample_CorrectedInItsRemarksOnly_LeavesTheHeel()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.Bath();
        await shop.Close(heat);
        var was = await Heel(shop);

        await Done(shop, shop.Get<CorrectSample>(), new(
            Guid.NewGuid(), shop.Now, was.SampleId!.Value, heat.Id, null, SampleKind.Bath, null, "17", "polished twice", "remark was missing"));

        Assert.Equal((3.65, was.Kg), (Percent(await Heel(shop), Element.C)!.Value, (await Heel(shop)).Kg));
    }

    private static async Task<Heel> Heel(Shop shop)
    {
        await using var db = shop.Db();
        return await db.InForce<Heel>().Include(h => h.Percents).OrderBy(h => h.ObservedAt).LastAsync(Soon);
    }

    private static double? Percent(Heel heel, Element element) => heel.Percents.Find(p => p.Element == element) is { Percent: var percent } ? Math.Round(percent, 9) : null;

    private static async Task<TResult> Done<TCommand, TResult>(Shop shop, Operation<TCommand, TResult> operation, TCommand command)
        where TCommand : Command => (await Shop.Do(operation, shop.Melter, command)).Value;
}
