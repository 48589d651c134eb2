using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Correcting;

/// <summary>A heat that was said to be in the wrong furnace, or to have ended at another time; masses by hand, steel yields 97 %.</summary>
public sealed class HeatFurnaceTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Furnace_PutRight_MovesMassesDipsAndHeelToItsLedger(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var other = await SecondFurnace(shop);
        await Dip(shop, other, 400);
        shop.Clock.Advance(1);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 1000);
        shop.Clock.Advance(1);
        await Dip(shop, shop.FurnaceId, 960); // read in the other one too: 400 were under it
        await shop.WeighIn(heat, shop.SteelId, 100);
        await shop.Sample(heat, SampleKind.Bath, ("C", 3.6), ("Si", 1.5));
        shop.Clock.Advance(1);
        Assert.True((await shop.Close(await shop.Heat(heat.Id), 57)).Succeeded);
        Assert.Equal(960 + 97 - 57, await shop.InFurnace(), 6);
        var known = shop.Now;
        shop.Clock.Advance(5);

        Assert.True((await Correct(shop, heat, c => c with { FurnaceId = other })).Succeeded);

        Assert.Equal(0, await shop.InFurnace(), 6);
        Assert.Equal(1000, await InFurnace(shop, other), 6);
        var view = await View(shop, heat);
        Assert.Equal(("Furnace 2", 400d, 1000d), (view.Heat.FurnaceName, view.Heat.HeelKg, Math.Round(view.Heat.LiquidKg, 6)));
        Assert.Equal(960 - 400 - 970d, view.Metal.Single(m => m.Kind == FurnaceMetalKind.Dipped && !m.Origin.IsCorrected).Kg, 6);
        Assert.Equal(("Furnace 2", "Furnace 1", "other button"), (view.OfItself[0].FurnaceName, view.OfItself[0].FormerFurnaceName, view.OfItself[0].Origin.Reason));
        Assert.Contains(StaleKind.Furnace, view.Plan.Stale.Select(n => n.Kind));
        await using var db = shop.Db();
        var heel = await db.InForce<Heel>().Include(h => h.Percents).SingleAsync(h => h.FromHeatId == heat.Id, Soon);
        Assert.Equal((other, 1000d), (heel.FurnaceId, Math.Round(heel.Kg, 6)));
        Assert.NotEmpty(heel.Percents);
        Assert.False(await db.InForce<Heel>().AnyAsync(h => h.FurnaceId == shop.FurnaceId, Soon));
        var before = (await shop.Get<HeatPage>().LoadAsKnown(heat.Id, known, Soon))!;
        Assert.Equal(("Furnace 1", 0d, 1000d), (before.Heat.FurnaceName, before.Heat.HeelKg, Math.Round(before.Heat.LiquidKg, 6)));
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    // 399.64 + 226.495 + 114.46 kg less the same three are not 0 in doubles, and what is left is no change that somebody made past the program.
    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Furnace_WhoseOnlyHeatIsPutIntoAnother_HoldsNothingAndTheTrailHolds(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var other = await SecondFurnace(shop);
        var heat = await shop.StartHeat();
        foreach (var kg in new[] { 412, 233.5, 118 }) await shop.WeighIn(heat, shop.SteelId, kg);

        Assert.True((await Correct(shop, heat, c => c with { FurnaceId = other })).Succeeded);

        Assert.Equal(0, await shop.InFurnace(), 9);
        Assert.Equal(740.595, await InFurnace(shop, other), 9);
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Furnace_PutRightTwice_KeepsWhatWasAddedAfterTheSampleAndLetsWeighingAndTapBeCorrected(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (second, third) = (await SecondFurnace(shop), (await Shop.Do(shop.Get<AddFurnace>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, "F3", "Furnace 3", 3000, 1800))).Value);
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat, 900);
        var rest = await shop.InFurnace();
        shop.Clock.Advance(5);
        var weighing = await shop.WeighIn(heat, shop.SteelId, 500, intoBath: true);
        Assert.True((await shop.Close(await shop.Heat(heat.Id))).Succeeded);
        shop.Clock.Advance(5);

        foreach (var furnace in new[] { second, third }) Assert.True((await Correct(shop, heat, c => c with { FurnaceId = furnace })).Succeeded);

        // 97 % of 500 kg steel with 0.2 % Si melted into the bath with 1.5 % Si.
        var heel = await HeelOf(shop, heat);
        Assert.Equal((third, Math.Round(rest + 485, 6)), (heel.FurnaceId, Math.Round(heel.Kg, 6)));
        Assert.Equal((rest * 1.5 + 485 * 0.2) / (rest + 485), heel.Percents.Single(p => p.Element == Element.Si).Percent, 6);

        var right = await Shop.Do(shop.Get<CorrectWeighing>(), shop.Melter, new(Guid.NewGuid(), shop.Now, weighing, heat.Id, shop.SteelId, 300, true, "the other line"));
        Assert.True(right.Succeeded);
        heel = await HeelOf(shop, heat);
        Assert.Equal(rest + 291, heel.Kg, 6);
        Assert.Equal((rest * 1.5 + 291 * 0.2) / (rest + 291), heel.Percents.Single(p => p.Element == Element.Si).Percent, 6);

        var tap = (await View(shop, heat)).Ladles.Single(l => l.Id == ladle.Id).Taps.Single().Origin.FactId;
        Assert.True((await Shop.Do(shop.Get<CorrectTap>(), shop.Melter, new(Guid.NewGuid(), shop.Now, tap, 800, null, "scale"))).Succeeded);
        Assert.Equal(rest + 291 + 100, await InFurnace(shop, third), 6);
        Assert.True((await Shop.Do(shop.Get<CorrectWeighing>(), shop.Melter, new(Guid.NewGuid(), shop.Now, right.Value, heat.Id, shop.SteelId, 0, true, "nothing was weighed"))).Succeeded);
        Assert.Equal(rest + 100, await InFurnace(shop, third), 6);
        Assert.Equal((0d, 0d), (Math.Round(await InFurnace(shop, second), 6), Math.Round(await shop.InFurnace(), 6)));
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Furnace_ChangedThreeTimes_LeavesEveryStateReadableAndBothLedgersRight(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var other = await SecondFurnace(shop);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 1000);
        var instants = new List<DateTimeOffset>();
        foreach (var (furnace, reason) in new[] { (other, "other button"), (shop.FurnaceId, "it was right"), (other, "it was not") })
        {
            instants.Add(shop.Now);
            shop.Clock.Advance(1);
            Assert.True((await Correct(shop, heat, c => c with { FurnaceId = furnace, Reason = reason })).Succeeded);
            Assert.Equal(970, await InFurnace(shop, furnace), 6);
            Assert.Equal(0, await InFurnace(shop, furnace == other ? shop.FurnaceId : other), 6);
        }

        Assert.Equal(["other button", "it was right", "it was not"], (await View(shop, heat)).OfItself.Select(c => c.Origin.Reason));
        foreach (var (at, name) in instants.Zip(["Furnace 1", "Furnace 2", "Furnace 1"]))
            Assert.Equal(name, (await shop.Get<HeatPage>().LoadAsKnown(heat.Id, at, Soon))!.Heat.FurnaceName);
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task End_ChangedThreeTimes_TakesWhatItWroteWithIt(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 1000);
        shop.Clock.Advance(30);
        Assert.True((await shop.Close(await shop.Heat(heat.Id), 975)).Succeeded); // 5 kg more than the ledger knew: emptied by weight
        var closedAt = (await shop.Heat(heat.Id)).ClosedAt!.Value;
        shop.Clock.Advance(30);
        var instants = new List<DateTimeOffset>();
        foreach (var (minutes, reason) in new[] { (-10d, "at the change of shift"), (12, "later after all"), (3, "asked the melter") })
        {
            instants.Add(shop.Now);
            shop.Clock.Advance(1);
            Assert.True((await Correct(shop, heat, c => c with { ClosedAt = closedAt.AddMinutes(minutes), Reason = reason })).Succeeded);
            await using var db = shop.Db();
            var lines = await db.InForce<FurnaceMetal>().Where(m => m.Kind != FurnaceMetalKind.Charged).OrderBy(m => m.Kind).ToListAsync(Soon);
            Assert.Equal([(FurnaceMetalKind.Dipped, 5), (FurnaceMetalKind.Pigged, -975d)], lines.Select(m => (m.Kind, Math.Round(m.Kg, 6))));
            Assert.All(lines, m => Assert.Equal(closedAt.AddMinutes(minutes), m.ObservedAt));
            Assert.Equal(closedAt.AddMinutes(minutes), (await db.InForce<Heel>().SingleAsync(Soon)).ObservedAt);
            Assert.Equal(0, await shop.InFurnace(), 6);
        }

        var view = await View(shop, heat);
        Assert.Equal([-10d, 12, 3], view.OfItself.Select(c => (c.ClosedAt!.Value - closedAt).TotalMinutes));
        Assert.Equal([0d, -10, 12], view.OfItself.Select(c => (c.FormerClosedAt!.Value - closedAt).TotalMinutes));
        Assert.Equal(["at the change of shift", "later after all", "asked the melter"], view.OfItself.Select(c => c.Origin.Reason));
        foreach (var (at, minutes) in instants.Zip([0d, -10, 12]))
            Assert.Equal((HeatState.Closed, closedAt.AddMinutes(minutes)), State((await shop.Get<HeatPage>().LoadAsKnown(heat.Id, at, Soon))!));
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Dip_AfterTheEnd_StaysWhenAndWhereItWasDipped(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var other = await SecondFurnace(shop);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 500);
        await shop.Sample(heat, SampleKind.Bath, ("C", 3.6), ("Si", 1.5));
        shop.Clock.Advance(10);
        Assert.True((await shop.Close(await shop.Heat(heat.Id))).Succeeded);
        var closedAt = (await shop.Heat(heat.Id)).ClosedAt!.Value;
        shop.Clock.Advance(10);
        await Dip(shop, shop.FurnaceId, 480);
        await using var db = shop.Db();
        var dipped = await db.InForce<Heel>().SingleAsync(h => h.Kg == 480, Soon);
        shop.Clock.Advance(10);

        Assert.True((await Correct(shop, heat, c => c with { ClosedAt = closedAt.AddMinutes(-2) })).Succeeded);
        Assert.Equal([closedAt.AddMinutes(-2), dipped.ObservedAt], await db.InForce<Heel>().OrderBy(h => h.ObservedAt).Select(h => h.ObservedAt).ToListAsync(Soon));

        var line = await db.InForce<FurnaceMetal>().SingleAsync(m => m.Kind == FurnaceMetalKind.Dipped, Soon);
        Assert.True((await Shop.Do(shop.Get<CorrectMetal>(), shop.Melter, new(Guid.NewGuid(), shop.Now, line.Id, 470, null, "read again"))).Succeeded);
        Assert.True((await Correct(shop, heat, c => c with { FurnaceId = other })).Succeeded);

        var heels = await db.InForce<Heel>().OrderBy(h => h.ObservedAt).Select(h => new { h.FurnaceId, h.Kg }).ToListAsync(Soon);
        Assert.Equal([(other, 485d), (shop.FurnaceId, 470d)], heels.Select(h => (h.FurnaceId, Math.Round(h.Kg, 6))));
        Assert.Equal((470d, 485d), (Math.Round(await shop.InFurnace(), 6), Math.Round(await InFurnace(shop, other), 6)));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Plan_MadeBeforeAHeatCameIntoItsFurnaceOrAfterItsEndMoved_IsMarked(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var other = await SecondFurnace(shop);
        var heat = await shop.StartHeat();
        var weighing = await shop.WeighIn(heat, shop.SteelId, 500);
        await shop.Sample(heat, SampleKind.Bath, ("C", 3.6), ("Si", 1.5));
        shop.Clock.Advance(10);
        Assert.True((await shop.Close(await shop.Heat(heat.Id))).Succeeded);
        var closedAt = (await shop.Heat(heat.Id)).ClosedAt!.Value;
        shop.Clock.Advance(10);
        Assert.True((await Correct(shop, heat, c => c with { ClosedAt = closedAt.AddMinutes(-2) })).Succeeded);
        shop.Clock.Advance(10);
        var (here, there) = (await shop.StartHeat(), await Started(shop, other));
        shop.Clock.Advance(10);
        Assert.Empty((await View(shop, here)).Plan.Stale);

        Assert.True((await Shop.Do(shop.Get<CorrectWeighing>(), shop.Melter, new(Guid.NewGuid(), shop.Now, weighing, heat.Id, shop.SteelId, 400, false, "the other line"))).Succeeded);
        Assert.Equal([(StaleKind.Heel, "the other line")], (await View(shop, here)).Plan.Stale.Select(n => (n.Kind, n.Reason!)));
        Assert.Empty((await View(shop, there)).Plan.Stale);

        // The heel of the heat that is there now is the other heat's.
        Assert.True((await Correct(shop, heat, c => c with { FurnaceId = other, Reason = "was the second" })).Succeeded);
        Assert.Equal([(StaleKind.Heel, "was the second")], (await View(shop, there)).Plan.Stale.Select(n => (n.Kind, n.Reason!)));
        Assert.Equal((0d, 388d), (Math.Round((await shop.Heat(here.Id)).HeelKg, 6), Math.Round((await shop.Heat(there.Id)).HeelKg, 6)));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Heat_WhereOrWhenItCannotHaveBeen_IsRefusedAtItsField(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var other = await SecondFurnace(shop);
        var small = (await Shop.Do(shop.Get<AddFurnace>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, "F3", "Furnace 3", 500, 300))).Value;
        var sampled = await shop.StartHeat();
        await shop.WeighIn(sampled, shop.SteelId, 1000);
        shop.Clock.Advance(5);
        var sampledAt = shop.Now;
        await shop.Sample(sampled, SampleKind.Bath, ("C", 3.6), ("Si", 1.5));
        shop.Clock.Advance(5);
        Assert.True((await shop.Close(await shop.Heat(sampled.Id), 970)).Succeeded);
        sampled = await shop.Heat(sampled.Id);
        shop.Clock.Advance(5);
        var open = await shop.StartHeat();
        var beside = await Started(shop, other);
        await shop.Sample(beside, SampleKind.Bath, ("C", 3.6), ("Si", 1.5));
        await shop.WeighIn(beside, shop.SteelId, 1000);
        shop.Clock.Advance(30);
        Assert.True((await shop.Close(await shop.Heat(beside.Id), 970)).Succeeded);
        beside = await shop.Heat(beside.Id);
        shop.Clock.Advance(30);
        var next = await Started(shop, other);
        shop.Clock.Advance(30);
        CorrectHeat.Command Asked(Heat heat) => new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, heat.GradeId, null, "wrong button");
        var operation = shop.Get<CorrectHeat>();

        await shop.Refuses(operation, shop.Supervisor, Asked(beside) with { FurnaceId = shop.FurnaceId }, "furnaceId", "furnace.taken");
        await shop.Refuses(operation, shop.Supervisor, Asked(beside) with { FurnaceId = 999_999 }, "furnaceId", "furnace.unknown");
        await shop.Refuses(operation, shop.Supervisor, Asked(beside) with { FurnaceId = small }, "furnaceId", "furnace.capacity");
        await shop.Refuses(operation, shop.Supervisor, Asked(open) with { ClosedAt = shop.Now.AddMinutes(-1) }, "closedAt", "state.wrong");
        await shop.Refuses(operation, shop.Supervisor, Asked(beside) with { ClosedAt = shop.Now.AddHours(1) }, "closedAt", "time.future");
        await shop.Refuses(operation, shop.Supervisor, Asked(beside) with { ClosedAt = beside.StartedAt.AddMinutes(-1) }, "closedAt", "heat.startedAfter");
        await shop.Refuses(operation, shop.Supervisor, Asked(beside) with { ClosedAt = beside.StartedAt.AddMicroseconds(1) }, "closedAt", "heat.metalAfter");
        await shop.Refuses(operation, shop.Supervisor, Asked(beside) with { ClosedAt = shop.Now.AddMinutes(-1) }, "closedAt", "furnace.taken");
        await shop.Refuses(operation, shop.Supervisor, Asked(sampled) with { ClosedAt = sampledAt.AddMinutes(-1) }, "closedAt", "heat.sampleAfter");
        await shop.Refuses(operation, shop.Supervisor, Asked(beside) with { StartedAt = beside.ClosedAt!.Value.AddMinutes(-1) }, "startedAt", "heat.metalBefore");
        await shop.Refuses(operation, shop.Supervisor, Asked(beside) with { StartedAt = shop.Now.AddMinutes(-1) }, "startedAt", "heat.endedBefore");
        await shop.Refuses(operation, shop.Supervisor, Asked(next) with { StartedAt = beside.ClosedAt.Value.AddMinutes(-1) }, "startedAt", "furnace.taken");
        await shop.Refuses(operation, shop.Supervisor, Asked(beside) with { FurnaceId = other, ClosedAt = beside.ClosedAt }, "", "correction.nothing");
    }

    private static (HeatState, DateTimeOffset?) State(HeatView view) => (view.Heat.State, view.Heat.ClosedAt);

    private static async Task<Heat> Started(Shop shop, long furnaceId)
    {
        var plan = await Shop.Do(shop.Get<PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, new ChargeChoice(furnaceId, shop.DuctileId, 1500)));
        return await shop.Heat((await Shop.Do(shop.Get<StartHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, plan.Value.PlanId))).Value.HeatId);
    }

    private static async Task<long> SecondFurnace(Shop shop) =>
        (await Shop.Do(shop.Get<AddFurnace>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, "F2", "Furnace 2", 3000, 1800))).Value;

    private static async Task<Heel> HeelOf(Shop shop, Heat heat)
    {
        await using var db = shop.Db();
        return await db.InForce<Heel>().Include(h => h.Percents).SingleAsync(h => h.FromHeatId == heat.Id, Soon);
    }

    private static Task<Outcome<double>> Dip(Shop shop, long furnaceId, double kg) =>
        Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), shop.Now, furnaceId, kg, null, "load cell", 20));

    private static async Task<double> InFurnace(Shop shop, long furnaceId)
    {
        await using var db = shop.Db();
        return await db.InFurnace(furnaceId, Soon);
    }

    private static async Task<Outcome<Guid>> Correct(Shop shop, Heat heat, Func<CorrectHeat.Command, CorrectHeat.Command> change)
    {
        var now = await shop.Heat(heat.Id);
        return await Shop.Do(shop.Get<CorrectHeat>(), shop.Metallurgist, change(new(Guid.NewGuid(), shop.Now, now.Id, now.Version, now.GradeId, null, "other button")));
    }

    private static async Task<HeatView> View(Shop shop, Heat heat) => (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;
}
