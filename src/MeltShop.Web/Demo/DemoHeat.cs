using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Storing;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Demo;

/// <summary>
/// One finished heat of yesterday, so that the history, a held ladle and a heel are there to be seen. It was observed then and is
/// entered now, and the records say both.
/// </summary>
internal sealed class DemoHeat(
    DemoHands hands, IDbContextFactory<RecordsContext> contexts, Dictionary<string, long> equipment, Dictionary<string, long> materials)
{
    /// <summary>The last thing that the demo does.</summary>
    public const string End = "heat/close";

    private const double MeltKg = 6000;
    private const double HoursAgo = 20;

    /// <summary>How far each weighing was off its target, in parts of a thousand, in turn.</summary>
    private static readonly double[] OffTarget = [4, -3, 0, 6, -2, 1];

    public async Task Melt(long gradeId, CancellationToken cancellation)
    {
        var plan = await hands.Do(hands.The<PlanCharge>(), Role.Metallurgist, new(
            DemoKey.Of("heat/plan"), At(0), new ChargeChoice(equipment["furnace-1"], gradeId, MeltKg)));
        var heat = await hands.Do(hands.The<StartHeat>(), Role.Melter, new(DemoKey.Of("heat/start"), At(5), plan.PlanId));
        var answer = await Answer(plan.PlanId, cancellation);
        for (var i = 0; i < answer.Lines.Count; i++)
        {
            var kg = Math.Round(answer.Lines[i].Kg * (1 + OffTarget[i % OffTarget.Length] / 1000), 1);
            await hands.Do(hands.The<WeighIn>(), Role.Melter, new(
                DemoKey.Of($"heat/weighing/{answer.Lines[i].Code}"), At(8 + 4 * i), heat.HeatId, materials[answer.Lines[i].Code], kg, IntoBath: false));
        }

        await Temperature("bath", 78, heat.HeatId, null, 1442);
        await hands.Do(hands.The<RecordSample>(), Role.Melter, new(
            DemoKey.Of("heat/bath"), At(80), heat.HeatId, null, SampleKind.Bath, DemoBurns.Of(Sparked(answer.Analysis)), "1"));
        await Temperature("superheat", 96, heat.HeatId, null, 1508);

        await new DemoLadles(this, hands, contexts, equipment, materials).Pour(heat.HeatId, cancellation);

        await using var db = await contexts.CreateDbContextAsync(cancellation);
        var version = await db.Heats.Where(h => h.Id == heat.HeatId).Select(h => h.Version).SingleAsync(cancellation);
        await hands.Do(hands.The<CloseHeat>(), Role.Melter, new(DemoKey.Of(End), At(190), heat.HeatId, version, PiggedKg: 0));
    }

    /// <summary>So many minutes after the plan.</summary>
    public DateTimeOffset At(double minutes) => hands.Now.AddHours(-HoursAgo).AddMinutes(minutes);

    public Task<long> Temperature(string what, double minutes, long heatId, long? treatedLadleId, double temperatureC) =>
        hands.Do(hands.The<RecordTemperature>(), Role.Melter, new(
            DemoKey.Of($"heat/temperature/{what}"), At(minutes), heatId, treatedLadleId, temperatureC));

    private async Task<ChargePlan> Answer(long planId, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        return StoredJson.Value<ChargePlan>(await db.Plans.Where(p => p.Id == planId).Select(p => p.Answer).SingleAsync(cancellation));
    }

    // What the plan expected, without the magnesium that no base iron has.
    private static Analysis Sparked(Analysis planned) => Analysis.Of(planned.Where(p => p.Key != Element.Mg));
}
