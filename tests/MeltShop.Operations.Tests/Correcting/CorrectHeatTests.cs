using MeltShop.Operations.Correcting;
using MeltShop.Operations.Grades;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Correcting;

/// <summary>The grade of a heat and its start, put right.</summary>
public sealed class CorrectHeatTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Grade_ChangedThreeTimes_LeavesEveryStateReadable(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        var (first, other) = (heat.GradeId, await OtherDuctile(shop));
        var instants = new List<DateTimeOffset>();
        foreach (var (grade, reason) in new[] { (other, "wrong button"), (first, "it was right"), (other, "it was not") })
        {
            instants.Add(shop.Now);
            shop.Clock.Advance(1);
            Assert.True((await Correct(shop, await shop.Heat(heat.Id), grade, reason: reason)).Succeeded);
        }

        var now = (await View(shop, heat))!;
        Assert.Equal(other, now.Grade.Id);
        Assert.Equal(["wrong button", "it was right", "it was not"], now.OfItself.Select(c => c.Origin.Reason));
        Assert.All(now.OfItself, c => Assert.Equal("The metallurgist", c.Origin.Person));
        Assert.Equal(3, now.Timeline.Count(row => row.Kind == TimelineKind.HeatCorrection));
        foreach (var (at, grade) in instants.Zip([first, other, first]))
            Assert.Equal(grade, (await shop.Get<HeatPage>().LoadAsKnown(heat.Id, at, Soon))!.Grade.Id);
        Assert.Equal([StaleKind.Grade, StaleKind.Grade, StaleKind.Grade], now.Plan.Stale.Select(note => note.Kind));
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Start_PutRight_StandsBesideTheFormerOne(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        var known = shop.Now;
        shop.Clock.Advance(1);

        var earlier = heat.StartedAt.AddMinutes(-25);
        Assert.True((await Correct(shop, heat, heat.GradeId, earlier)).Succeeded);

        Assert.Equal(earlier, (await shop.Heat(heat.Id)).StartedAt);
        Assert.Equal(heat.StartedAt, (await shop.Get<HeatPage>().LoadAsKnown(heat.Id, known, Soon))!.Heat.StartedAt);
        Assert.Empty((await View(shop, heat))!.Plan.Stale);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Heel_ChangedThreeTimes_LeavesEveryStateReadableAndTheLedgerRight(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.FurnaceId, 300, new Dictionary<string, double> { ["C"] = 3.5 }, "dipped", 30));
        shop.Clock.Advance(1);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 500);
        var instants = new List<DateTimeOffset>();
        foreach (var (kg, reason) in new[] { (350d, "lining worn"), (0, "drained by the night shift"), (410.5, "dipped again") })
        {
            instants.Add(shop.Now);
            shop.Clock.Advance(1);
            Assert.True((await Correct(shop, await shop.Heat(heat.Id), heat.GradeId, reason: reason, heelKg: kg)).Succeeded);
            var view = (await View(shop, heat))!;
            Assert.Equal((kg, kg + (500 * 0.97)), (view.Heat.HeelKg, Math.Round(view.Heat.LiquidKg, 6)));
            Assert.Equal(view.Heat.LiquidKg, await shop.InFurnace(), 6);
        }

        var now = (await View(shop, heat))!;
        Assert.Equal(["lining worn", "drained by the night shift", "dipped again"], now.OfItself.Select(c => c.Origin.Reason));
        Assert.Equal([(350d, 300d), (0, 350), (410.5, 0)], now.OfItself.Select(c => (c.HeelKg!.Value, c.FormerHeelKg!.Value)));
        foreach (var (at, kg) in instants.Zip([300d, 350, 0]))
            Assert.Equal(kg, (await shop.Get<HeatPage>().LoadAsKnown(heat.Id, at, Soon))!.Heat.HeelKg);
        Assert.Contains(StaleKind.Heel, now.Plan.Stale.Select(note => note.Kind));
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Heel_PutRightBeforeADip_LeavesWhatTheDipShowed(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 500);
        shop.Clock.Advance(1);
        await Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.FurnaceId, 600, null, "dipped", 30));
        shop.Clock.Advance(1);

        Assert.True((await Correct(shop, await shop.Heat(heat.Id), heat.GradeId, heelKg: 80)).Succeeded);

        Assert.Equal(600, await shop.InFurnace(), 6);
        Assert.Equal(600, (await View(shop, heat))!.Heat.LiquidKg, 6);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Grade_ChangedAfterARelease_HoldsTheCastingsAgain(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat, 700);
        var id = await shop.Sample(heat, ladle, SampleKind.LastMetal, ("C", 3.4), ("Si", 2.4), ("Mg", 0.041));
        Assert.True((await shop.Decide(shop.Inspector, await shop.Treated(ladle.Id), CastingVerdict.Release, id)).Succeeded);
        shop.Clock.Advance(1);

        var outdated = await Correct(shop, heat, await OtherDuctile(shop));
        var corrected = await Correct(shop, await shop.Heat(heat.Id), await OtherDuctile(shop));

        Assert.Equal("version.stale", Assert.Single(outdated.Findings).Code);
        Assert.True(corrected.Succeeded);
        Assert.Equal(TreatedLadleState.Held, (await shop.Treated(ladle.Id)).State);
        var decisions = (await View(shop, heat))!.Ladles.Single().Decisions;
        Assert.Equal((CastingVerdict.Hold, "wrong button"), (decisions[^1].Verdict, decisions[^1].Origin.Reason));
        Assert.Contains(StaleKind.Grade, (await View(shop, heat))!.Ladles.Single().Cards.Single().Stale.Select(note => note.Kind));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Heat_WhatCannotBe_IsRefusedAtItsField(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        await shop.Poured(heat, 700);
        heat = await shop.Heat(heat.Id);
        CorrectHeat.Command Asked(long gradeId, DateTimeOffset? startedAt = null, string reason = "wrong button") =>
            new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, gradeId, startedAt, reason);
        var operation = shop.Get<CorrectHeat>();

        await shop.Refuses(operation, shop.Metallurgist, Asked(heat.GradeId), "", "correction.nothing");
        await shop.Refuses(operation, shop.Metallurgist, Asked(999_999), "gradeId", "grade.unknown");
        await shop.Refuses(operation, shop.Metallurgist, Asked(shop.GreyId), "gradeId", "grade.otherRoute");
        await shop.Refuses(operation, shop.Metallurgist, Asked(heat.GradeId, shop.Now.AddHours(1)), "startedAt", "time.future");
        await shop.Refuses(operation, shop.Metallurgist, Asked(heat.GradeId, shop.Now, ""), "reason", "text.missing");
        await shop.Refuses(operation, shop.Metallurgist, Asked(heat.GradeId) with { HeelKg = -1 }, "heelKg", "mass.negative");
        await shop.Refuses(operation, shop.Metallurgist, Asked(heat.GradeId) with { HeelKg = 20_000 }, "heelKg", "furnace.capacity");
        await shop.Refuses(operation, shop.Melter, Asked(heat.GradeId, shop.Now), "", "right.missing");
    }

    /// <summary>A second ductile grade.</summary>
    private static async Task<long> OtherDuctile(Shop shop)
    {
        await using var db = shop.Db();
        if (await db.Grades.FirstOrDefaultAsync(g => g.Code == "EN-GJS-400-15", Soon) is { } known) return known.Id;
        return (await Shop.Do(shop.Get<AddGrade>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, "EN-GJS-400-15", IronFamily.Ductile, "invented for a test", [new(WindowStage.Poured, "Si", 2.3, 2.5, 2.8)], null))).Value;
    }

    private static Task<Outcome<Guid>> Correct(Shop shop, Heat heat, long gradeId, DateTimeOffset? startedAt = null, string reason = "wrong button", double? heelKg = null) =>
        Shop.Do(shop.Get<CorrectHeat>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, gradeId, startedAt, reason, heelKg));

    private static Task<HeatView?> View(Shop shop, Heat heat) => shop.Get<HeatPage>().Load(heat.Id, Soon);
}
