using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Heats;

/// <summary>One heat, all of it.</summary>
public sealed class HeatPage(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>The heat, or null where there is none with this id.</summary>
    public async Task<HeatView?> Load(long heatId, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        if (await HeatHeadView.Load(db, heatId, ct) is not { } head) return null;

        var grade = (await GradeRows.Load(db.Grades.Where(g => g.Id == head.GradeId), ct)).Single();
        var plan = await PlanRows.Load(db, head.PlanId, ct);
        var weighings = await Weighings(db, heatId, ct);
        var temperatures = await Temperatures(db, heatId, ct);
        var samples = await SampleRows.Load(db, db.Samples.Where(s => s.HeatId == heatId), ct);
        var ladles = await TreatedLadleRows.Load(db, db.TreatedLadles.Where(l => l.HeatId == heatId), ct);
        var more = new[] { weighings.Count, temperatures.Count, samples.Count, ladles.Count }.Max() > Facts.Most;
        return new(
            head, grade, plan!, [.. weighings.Take(Facts.Most)], [.. temperatures.Take(Facts.Most)], [.. samples.Take(Facts.Most)],
            [.. ladles.Take(Facts.Most)], Timeline(weighings, temperatures, samples, ladles), more);
    }

    internal static async Task<IReadOnlyList<TemperatureView>> Temperatures(RecordsContext db, long heatId, CancellationToken ct) =>
    [
        .. (await db.Rows(db.Temperatures.Where(t => t.HeatId == heatId), ct))
            .Select(r => new TemperatureView(r.Origin, r.Fact.TemperatureC, r.Fact.TreatedLadleId)),
    ];

    private static async Task<IReadOnlyList<WeighingView>> Weighings(RecordsContext db, long heatId, CancellationToken ct)
    {
        var rows = await db.Rows(db.Weighings.Where(w => w.HeatId == heatId), ct);
        var ids = rows.Select(r => r.Fact.MaterialId).Distinct().ToList();
        var materials = await db.Materials.Where(m => ids.Contains(m.Id)).Select(m => new { m.Id, m.Code, m.Name }).ToDictionaryAsync(m => m.Id, ct);
        return
        [
            .. rows.Select(r => new WeighingView(
                r.Origin, r.Fact.MaterialId, materials[r.Fact.MaterialId].Code, materials[r.Fact.MaterialId].Name, r.Fact.Kg, r.Fact.IntoBath)),
        ];
    }

    private static IReadOnlyList<TimelineRow> Timeline(
        IReadOnlyList<WeighingView> weighings, IReadOnlyList<TemperatureView> temperatures, IReadOnlyList<SampleView> samples,
        IReadOnlyList<TreatedLadleView> ladles) =>
    [
        .. weighings.Select(w => new TimelineRow(TimelineKind.Weighing, w.Origin))
            .Concat(temperatures.Select(t => new TimelineRow(TimelineKind.Temperature, t.Origin)))
            .Concat(samples.Select(s => new TimelineRow(TimelineKind.Sample, s.Origin)))
            .Concat(ladles.SelectMany(l => l.Cards).Select(c => new TimelineRow(TimelineKind.PocketCard, c.Origin)))
            .Concat(ladles.SelectMany(l => l.Taps).Select(t => new TimelineRow(TimelineKind.Tap, t.Origin)))
            .Concat(ladles.SelectMany(l => l.Decisions).Select(d => new TimelineRow(TimelineKind.CastingDecision, d.Origin)))
            .OrderBy(r => r.Origin.ObservedAt).ThenBy(r => r.Origin.EnteredAt).Take(Facts.Most),
    ];
}
