using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;

namespace MeltShop.Operations.Tests.Heats;

/// <summary>How far the metal in a furnace may be off, whatever heats lie between it and the last dip; by hand, steel yields 97 %.</summary>
public sealed class PlusMinusTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task PlusMinus_TwoHeatsAfterTheDip_GrowsWithWhatCameInBoth(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await Dip(shop, 800, 40);
        var first = await shop.StartHeat();
        await shop.WeighIn(first, shop.SteelId, 1000);
        await shop.Sample(first, Records.Laboratory.SampleKind.Bath, ("C", 3.6), ("Si", 1.5));
        await Shop.Do(shop.Get<PigOut>(), shop.Melter, new(Guid.NewGuid(), shop.Now, first.Id, 600, null));
        Assert.True((await shop.Close(await shop.Heat(first.Id))).Succeeded);
        var known = shop.Now;
        shop.Clock.Advance(10);
        var second = await shop.StartHeat();
        await shop.WeighIn(second, shop.SteelId, 500);

        // √(40² + (5 % of (970 + 485))²) = √(1600 + 72.75²) = √6892.5625; what left the furnace was weighed.
        Assert.Equal(83.0214580, await PlusMinus(shop, second), 6);
        Assert.Equal(83.0214580, await PlusMinus(shop, first), 6); // the furnace of now
        // As it was known between them: √(1600 + 48.5²) = √3952.25.
        Assert.Equal(62.8669229, FurnaceLedger.PlusMinusKg((await shop.Get<HeatPage>().LoadAsKnown(first.Id, known, Soon))!.Ledger), 6);

        shop.Clock.Advance(1);
        await Dip(shop, 1500, null);
        Assert.Equal(75, await PlusMinus(shop, second), 6); // nobody said: 5 % of 1500
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task PlusMinus_OfAFurnaceThatWasNeverDipped_IsAShareOfAllThatEverCame(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 1000);

        var view = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;

        Assert.Null(view.Ledger.DippedAt);
        Assert.Equal(48.5, FurnaceLedger.PlusMinusKg(view.Ledger), 6);
        Assert.Equal(3000, FurnaceLedger.PlusMinusKg(view.Ledger with { CameKg = 60_001 })); // it holds no more
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Start_ThatArrivesLate_HasTheHeelOfItsOwnTime(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await Dip(shop, 300, 20);
        shop.Clock.Advance(5);
        var startedAt = shop.Now;
        shop.Clock.Advance(5);
        await Dip(shop, 250, 20);
        var plan = await Shop.Do(shop.Get<Operations.Charging.PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, new Operations.Charging.ChargeChoice(shop.FurnaceId, shop.DuctileId, 1500)));

        var started = await Shop.Do(shop.Get<Operations.Charging.StartHeat>(), shop.Melter, new(Guid.NewGuid(), startedAt, plan.Value.PlanId));

        Assert.Equal((300d, startedAt), ((await shop.Heat(started.Value.HeatId)).HeelKg, (await shop.Heat(started.Value.HeatId)).StartedAt));
        Assert.Equal(250, await shop.InFurnace(), 6);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Start_ThatArrivesLate_IsRefusedWhereAnotherHeatWasInTheFurnaceSince(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var startedAt = shop.Now;
        shop.Clock.Advance(5);
        var mistake = await shop.StartHeat();
        shop.Clock.Advance(1);
        await Shop.Do(shop.Get<CancelHeat>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, mistake.Id, mistake.Version, "wrong button"));
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 100);
        shop.Clock.Advance(5);
        heat = await shop.Heat(heat.Id);
        await Shop.Do(shop.Get<CancelHeat>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, "no power"));
        var inside = shop.Now.AddMinutes(-1);
        var operation = shop.Get<Operations.Charging.StartHeat>();

        var refused = await shop.Refuses(operation, shop.Melter, new(Guid.NewGuid(), startedAt, heat.PlanId), "planId", "furnace.taken");
        Assert.Contains(heat.Number, refused.Single(finding => finding.Code == "furnace.taken").Arguments);
        await shop.Refuses(operation, shop.Melter, new(Guid.NewGuid(), inside, heat.PlanId), "planId", "furnace.taken");
        Assert.True((await Shop.Do(operation, shop.Melter, new(Guid.NewGuid(), shop.Now, heat.PlanId))).Succeeded); // the microsecond in which the other ended
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Entries_OfTheSameMicrosecond_KeepTheOrderInWhichTheyWereEntered(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        shop.Clock.Advance(1);
        var at = shop.Now;
        var before = await WeighIn(shop, heat, at, 1000);
        await Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), at, shop.FurnaceId, 950, null, "load cell", 15));
        var after = await WeighIn(shop, heat, at, 100);
        Assert.Equal(950 + 97, await shop.InFurnace(), 6);

        await Correct(shop, heat, before, 900); // the dip showed what was there whatever stood before it
        Assert.Equal(950 + 97, await shop.InFurnace(), 6);
        await Correct(shop, heat, after, 200);
        Assert.Equal(950 + 194, await shop.InFurnace(), 6);
        var dip = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Metal.Single(m => m.Kind == FurnaceMetalKind.Dipped && !m.Origin.IsCorrected).Origin.FactId;
        await Shop.Do(shop.Get<CorrectMetal>(), shop.Melter, new(Guid.NewGuid(), shop.Now, dip, 940, 15, "read again"));
        Assert.Equal(940 + 194, await shop.InFurnace(), 6);
        // √(15² + (5 % of 194)²) = √(225 + 94.09)
        Assert.Equal(17.8630904, await PlusMinus(shop, heat), 6);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Furnace_ThatWasNeverDipped_GivesNoMoreThanItHolds(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        for (var load = 0; load < 40; load++) await shop.WeighIn(heat, shop.SteelId, 2500);
        await Shop.Do(shop.Get<PigOut>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, 97_000, null));
        await shop.WeighIn(heat, shop.SteelId, 1000);
        Assert.Equal(3000, await PlusMinus(shop, heat), 6); // and not the 4898.5 that are 5 % of 97 970: more can neither be there nor be missing

        // It holds 3000 kg, which 5 % more may be.
        await shop.Refuses(shop.Get<PigOut>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, 3151, null), "kg", "furnace.short");
        Assert.True((await Shop.Do(shop.Get<PigOut>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, 3149, null))).Succeeded);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Heat_ThatEndsWithNothingLeft_IsADipOfNothing(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var first = await shop.StartHeat();
        await shop.WeighIn(first, shop.SteelId, 1000);
        shop.Clock.Advance(1);
        Assert.True((await shop.Close(await shop.Heat(first.Id), 970)).Succeeded);
        shop.Clock.Advance(1);
        var second = await shop.StartHeat();
        await shop.WeighIn(second, shop.SteelId, 500);

        Assert.Equal(24.25, await PlusMinus(shop, second), 6); // 5 % of 485: what came before has left
    }

    private static async Task<double> PlusMinus(Shop shop, Heat heat) => FurnaceLedger.PlusMinusKg((await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Ledger);

    private static Task<Outcome<double>> Dip(Shop shop, double kg, double? plusMinusKg) =>
        Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.FurnaceId, kg, null, "load cell", plusMinusKg));

    private static async Task<long> WeighIn(Shop shop, Heat heat, DateTimeOffset at, double kg) =>
        (await Shop.Do(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), at, heat.Id, shop.SteelId, kg, false))).Value;

    private static async Task Correct(Shop shop, Heat heat, long weighing, double kg) => Assert.True((await Shop.Do(shop.Get<CorrectWeighing>(), shop.Melter, new(
        Guid.NewGuid(), shop.Now, weighing, heat.Id, shop.SteelId, kg, false, "weighed again"))).Succeeded);
}
