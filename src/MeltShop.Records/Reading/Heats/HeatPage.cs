using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Heats;

/// <summary>One heat, all of it.</summary>
public sealed class HeatPage(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>The operations after which samples are judged otherwise than before; what held before is not kept as facts.</summary>
    public static IReadOnlyList<string> Judging { get; } = ["ChangeWindow", "SetInstrument", "RecordControlSample"];

    /// <summary>The heat, or null where there is none with this id.</summary>
    public Task<HeatView?> Load(long heatId, CancellationToken ct = default) => LoadAsKnown(heatId, null, ct);

    /// <summary>The heat as it was known at some time: what was entered later, corrections included, is left out.</summary>
    public async Task<HeatView?> LoadAsKnown(long heatId, DateTimeOffset? known, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        if (await HeatHeadView.Load(db, heatId, ct) is not { } head) return null;
        if (known is { } then) head = await AsKnown.Of(db, head, then, ct);

        var grade = (await GradeRows.Load(db.Grades.Where(g => g.Id == head.GradeId), ct)).Single();
        var plan = await PlanRows.Load(db, head.PlanId, ct);
        var weighings = await HeatFacts.Weighings(db, heatId, known, ct);
        var temperatures = await HeatFacts.Temperatures(db, heatId, known, ct);
        var samples = await HeatFacts.Samples(db, heatId, known, ct);
        var ladles = await TreatedLadleRows.Load(db, db.TreatedLadles.Where(l => l.HeatId == heatId), known, ct);
        var metal = await HeatFacts.Metal(db, heatId, known, ct);
        var more = new[] { weighings.Count, temperatures.Count, samples.Count, ladles.Count, metal.Count }.Max() > Facts.Most;
        var view = new HeatView(
            head, grade, plan!, [.. weighings.Take(Facts.Most)], [.. temperatures.Take(Facts.Most)], [.. samples.Take(Facts.Most)],
            [.. ladles.Take(Facts.Most)], [], more)
        {
            Metal = [.. metal.Take(Facts.Most)],
            Ledger = await LedgerBasis.Load(db, head.FurnaceId, known, known is null ? null : head.ClosedAt, ct),
            BurnDecisions = await HeatFacts.BurnDecisions(db, heatId, known, ct),
            OfItself = await HeatFacts.OfItself(db, heatId, known, ct),
            Steps = await HeatFacts.Steps(db, heatId, known, ct),
            LadleSteps = await HeatFacts.LadleSteps(db, heatId, known, ct),
            Corrections = await HeatFacts.Corrections(db, heatId, known, ct),
            Heel = known is null && head.State is HeatState.Charging ? await HeatFacts.Heel(db, head, ct) : null,
            Coins = known is null ? await CoinRows.Load(db, CoinRows.Waiting(db).Where(c => c.HeatId == heatId), ct) : [],
            Instruments = await InstrumentStates.Load(db, [.. samples.Select(s => s.Instrument).OfType<InstrumentView>().DistinctBy(i => i.Id)], ct),
            KnownAt = known,
            IsJudgedAnew = known is { } at && await db.Entries.AnyAsync(e => e.EnteredAt > at && Judging.Contains(e.Operation), ct),
        };
        view = known is null ? view : AsKnown.Of(view);
        view = await Staleness.Mark(db, view, ct);
        return view with { Timeline = HeatTimelineRows.Of(view) };
    }
}
