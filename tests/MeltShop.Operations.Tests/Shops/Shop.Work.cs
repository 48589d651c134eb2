using MeltShop.Operations.Charging;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Shops;

public sealed partial class Shop
{
    /// <summary>Runs an operation as somebody. What was done is asked for once more with the same key: it is done once, and the answer is the same.</summary>
    public static async Task<Outcome<TResult>> Do<TCommand, TResult>(Operation<TCommand, TResult> operation, Acting who, TCommand command)
        where TCommand : Command
    {
        var first = await operation.Run(who, command, TestContext.Current.CancellationToken);
        if (!first.Succeeded) return first;
        var second = await operation.Run(who, command, TestContext.Current.CancellationToken);
        Assert.Equal(RecordsJson.Text(first.Value), RecordsJson.Text(second.Value));
        return first;
    }

    /// <summary>Plans 2000 kg of the grade and starts the heat.</summary>
    public async Task<Heat> StartHeat(long? gradeId = null)
    {
        var plan = await Do(Get<PlanCharge>(), Melter, new(Guid.NewGuid(), Now, new ChargeChoice(FurnaceId, gradeId ?? DuctileId, 2000)));
        var started = await Do(Get<StartHeat>(), Melter, new(Guid.NewGuid(), Now, plan.Value.PlanId));
        return await Heat(started.Value.HeatId);
    }

    /// <summary>A heat with its charge weighed in as planned and a bath sample taken.</summary>
    public async Task<Heat> Bath(long? gradeId = null)
    {
        var heat = await StartHeat(gradeId);
        foreach (var (materialId, kg) in await Planned(heat)) await WeighIn(heat, materialId, kg);
        Clock.Advance(60);
        await Sample(heat, SampleKind.Bath, ("C", 3.65), ("Si", 1.5), ("Mn", 0.3), ("S", 0.012));
        return await Heat(heat.Id);
    }

    /// <summary>A ladle tapped with so much and reacted.</summary>
    public async Task<TreatedLadle> Poured(Heat heat, double plannedKg = 900, double? tappedKg = null, long? ladleId = null)
    {
        var treated = await Prepared(heat, plannedKg, ladleId);
        Clock.Advance(5);
        await Do(Get<RecordTap>(), Melter, new(Guid.NewGuid(), Now, treated.Id, treated.Version, tappedKg ?? plannedKg, null));
        treated = await Treated(treated.Id);
        Clock.Advance(2);
        if (treated.State == TreatedLadleState.Tapped) await Do(Get<EndReaction>(), Melter, new(Guid.NewGuid(), Now, treated.Id, treated.Version));
        return await Treated(treated.Id);
    }

    public async Task<TreatedLadle> Prepared(Heat heat, double plannedKg = 900, long? ladleId = null)
    {
        var result = await Do(Get<PreparePocket>(), Melter, Pocket(heat, plannedKg) with { LadleId = ladleId ?? LadleId });
        return await Treated(result.Value.TreatedLadleId);
    }

    /// <summary>A ladle like the first one.</summary>
    public async Task<long> SecondLadle(string code = "L2") => (await Do(Get<AddLadle>(), Administrator, new(
        Guid.NewGuid(), Now, code, "Ladle " + code, "sandwich", 1100, 40, 50, null, 0.001, 5, "invented for a test"))).Value;

    /// <summary>A mould of so much, poured in 20 s.</summary>
    public Task<Outcome<RecordMould.Result>> Mould(TreatedLadle ladle, string label, double kg) =>
        Do(Get<RecordMould>(), Melter, new(Guid.NewGuid(), Now, ladle.Id, label, kg, 20));

    public PreparePocket.Command Pocket(Heat heat, double plannedKg) =>
        new(Guid.NewGuid(), Now, heat.Id, LadleId, plannedKg, 1480, null, null, null, null, null, InoculantId, 0.4)
        {
            Extras = new() { Checks = [.. PocketChecks.For(IronFamily.Ductile), .. PocketChecks.For(IronFamily.Grey)] },
        };

    public async Task<long> WeighIn(Heat heat, long materialId, double kg, bool intoBath = false) =>
        (await Do(Get<WeighIn>(), Melter, new(Guid.NewGuid(), Now, heat.Id, materialId, kg, intoBath))).Value;

    public Task<long> Sample(Heat heat, SampleKind kind, params (string Element, double Percent)[] percents) => Sample(heat, null, kind, percents);

    /// <summary>A coin with three burns of the same values.</summary>
    public async Task<long> Sample(Heat heat, TreatedLadle? ladle, SampleKind kind, params (string Element, double Percent)[] percents) =>
        (await Do(Get<RecordSample>(), Melter, new(Guid.NewGuid(), Now, heat.Id, ladle?.Id, kind, [Burn(percents), Burn(percents), Burn(percents)]))).Value;

    public static IReadOnlyList<ReadingInput> Burn(params (string Element, double Percent)[] percents) =>
        [.. percents.Select(p => new ReadingInput(p.Element, p.Percent, false, FormattableString.Invariant($"{p.Percent}")))];

    public Task<Outcome<CloseHeat.Result>> Close(Heat heat, double piggedKg = 0) =>
        Do(Get<CloseHeat>(), Melter, new(Guid.NewGuid(), Now, heat.Id, heat.Version, piggedKg));

    public Task<Outcome<Guid>> Decide(Acting who, TreatedLadle ladle, CastingVerdict verdict, long? sampleId = null, string? reason = null) =>
        Do(Get<DecideCastings>(), who, new(Guid.NewGuid(), Now, ladle.Id, ladle.Version, verdict, sampleId, reason) { Password = Password });

    public async Task<Heat> Heat(long id)
    {
        await using var db = Db();
        return await db.Heats.AsNoTracking().SingleAsync(h => h.Id == id);
    }

    public async Task<TreatedLadle> Treated(long id)
    {
        await using var db = Db();
        return await db.TreatedLadles.AsNoTracking().SingleAsync(l => l.Id == id);
    }

    /// <summary>Liquid in the furnace, kg.</summary>
    public async Task<double> InFurnace()
    {
        await using var db = Db();
        return await db.InFurnace(FurnaceId, TestContext.Current.CancellationToken);
    }

    /// <summary>How many commands were kept, and how many rows their trail has: equal, or something was saved half.</summary>
    public async Task<(int Entries, int TrailRows)> Kept()
    {
        await using var db = Db();
        return (await db.Entries.CountAsync(), await db.TrailRows.CountAsync());
    }

    public async Task<List<(long MaterialId, double Kg)>> Planned(Heat heat)
    {
        await using var db = Db();
        var answer = Storing.StoredJson.Value<MeltShop.Charging.Plans.ChargePlan>((await db.Plans.SingleAsync(p => p.Id == heat.PlanId)).Answer);
        var ids = await db.Materials.ToDictionaryAsync(m => m.Code, m => m.Id);
        return [.. answer.Lines.Select(l => (ids[l.Code], l.Kg))];
    }
}
