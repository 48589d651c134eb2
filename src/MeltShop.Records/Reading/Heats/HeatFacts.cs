using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Heats;

/// <summary>Reads the facts of a heat, one kind at a time: as many statements, however many facts there are.</summary>
internal static class HeatFacts
{
    public static async Task<IReadOnlyList<TemperatureView>> Temperatures(RecordsContext db, long heatId, DateTimeOffset? known, CancellationToken ct)
    {
        var moves = await Moves.Load<TemperatureReading>(db, heatId, known, ct);
        return
        [
            .. (await db.Rows(db.Temperatures.Where(t => t.HeatId == heatId), known, ct))
                .Select(r => new TemperatureView(moves.Mark(r.Origin), r.Fact.TemperatureC, r.Fact.TreatedLadleId)),
        ];
    }

    public static async Task<IReadOnlyList<WeighingView>> Weighings(RecordsContext db, long heatId, DateTimeOffset? known, CancellationToken ct)
    {
        var moves = await Moves.Load<Weighing>(db, heatId, known, ct);
        var rows = await db.Rows(db.Weighings.Where(w => w.HeatId == heatId), known, ct);
        var ids = rows.Select(r => r.Fact.MaterialId).Distinct().ToList();
        var materials = await db.Materials.Where(m => ids.Contains(m.Id)).Select(m => new { m.Id, m.Code, m.Name }).ToDictionaryAsync(m => m.Id, ct);
        return
        [
            .. rows.Select(r => new WeighingView(
                moves.Mark(r.Origin), r.Fact.MaterialId, materials[r.Fact.MaterialId].Code, materials[r.Fact.MaterialId].Name, r.Fact.Kg, r.Fact.IntoBath) { Lot = r.Fact.Lot }),
        ];
    }

    public static async Task<IReadOnlyList<MetalView>> Metal(RecordsContext db, long heatId, DateTimeOffset? known, CancellationToken ct) =>
    [
        .. (await db.Rows(db.FurnaceMetals.Where(m => m.HeatId == heatId).Include(m => m.Percents), known, ct)).Select(r => new MetalView(
            r.Origin, r.Fact.Kind, r.Fact.Kg, r.Fact.LevelKg, r.Fact.PlusMinusKg, r.Fact.TreatedLadleId,
            Analysis.Of(r.Fact.Percents.Select(p => KeyValuePair.Create(p.Element, p.Percent))))),
    ];

    /// <summary>The heel in force that the heat began with; null where there is none.</summary>
    public static async Task<HeatHeelView?> Heel(RecordsContext db, HeatHeadView heat, CancellationToken ct)
    {
        var heel = await db.InForce<Heel>().AsNoTracking().Include(h => h.Percents).Where(h => h.FurnaceId == heat.FurnaceId && h.ObservedAt <= heat.StartedAt)
            .OrderByDescending(h => h.ObservedAt).ThenByDescending(h => h.Id).FirstOrDefaultAsync(ct);
        return heel is null ? null : new(Analysis.Of(heel.Percents.Select(p => KeyValuePair.Create(p.Element, p.Percent))), heel.EnteredAt);
    }

    public static async Task<IReadOnlyList<BurnDecisionView>> BurnDecisions(RecordsContext db, long heatId, DateTimeOffset? known, CancellationToken ct) =>
    [
        .. (await db.Rows(db.BurnDecisions.Where(d => db.Samples.Any(s => s.Id == d.SampleId && s.HeatId == heatId)), known, ct))
            .Select(r => new BurnDecisionView(r.Origin, r.Fact.SampleId, r.Fact.Ordinal, r.Fact.SetAside)),
    ];

    public static async Task<IReadOnlyList<BathCorrectionView>> Corrections(RecordsContext db, long heatId, DateTimeOffset? known, CancellationToken ct) =>
    [
        .. (await db.Rows(db.BathCorrections.Where(c => c.HeatId == heatId), known, ct))
            .Select(r => new BathCorrectionView(r.Origin, r.Fact.SampleId, r.Fact.Goal, r.Fact.Problem, r.Fact.Answer, r.Fact.Versions, r.Fact.TotalCost)),
    ];

    public static async Task<IReadOnlyList<HeatCorrectionView>> OfItself(RecordsContext db, long heatId, DateTimeOffset? known, CancellationToken ct)
    {
        var rows = await db.Rows(db.HeatCorrections.Where(c => c.HeatId == heatId), known, ct);
        if (rows.Count == 0) return [];
        var ids = rows.SelectMany(r => new[] { r.Fact.GradeId, r.Fact.FormerGradeId }).Distinct().ToList();
        var furnaces = await db.Furnaces.Select(f => new { f.Id, f.Name }).ToDictionaryAsync(f => f.Id, f => f.Name, ct);
        var codes = await db.Grades.Where(g => ids.Contains(g.Id)).Select(g => new { g.Id, g.Code }).ToDictionaryAsync(g => g.Id, g => g.Code, ct);
        return
        [
            .. rows.Select(r => new HeatCorrectionView(
                r.Origin, codes[r.Fact.GradeId], codes[r.Fact.FormerGradeId], r.Fact.StartedAt, r.Fact.FormerStartedAt, r.Fact.HeelKg, r.Fact.FormerHeelKg)
            {
                FurnaceName = r.Fact.FurnaceId is { } furnace ? furnaces[furnace] : "", FormerFurnaceName = r.Fact.FormerFurnaceId is { } former ? furnaces[former] : "",
                IsOtherFurnace = r.Fact.FurnaceId != r.Fact.FormerFurnaceId, ClosedAt = r.Fact.ClosedAt, FormerClosedAt = r.Fact.FormerClosedAt,
            }),
        ];
    }

    public static async Task<IReadOnlyList<HeatStepView>> Steps(RecordsContext db, long heatId, DateTimeOffset? known, CancellationToken ct) =>
    [
        .. (await db.Rows(db.HeatSteps.Where(s => s.HeatId == heatId), known, ct)).Select(r => new HeatStepView(r.Origin, r.Fact.State)),
    ];

    public static async Task<IReadOnlyList<LadleStepView>> LadleSteps(RecordsContext db, long heatId, DateTimeOffset? known, CancellationToken ct) =>
    [
        .. (await db.Rows(db.LadleSteps.Where(s => db.TreatedLadles.Any(l => l.Id == s.TreatedLadleId && l.HeatId == heatId)), known, ct))
            .Select(r => new LadleStepView(r.Origin, r.Fact.TreatedLadleId, r.Fact.State)),
    ];

    public static async Task<IReadOnlyList<Laboratory.SampleView>> Samples(RecordsContext db, long heatId, DateTimeOffset? known, CancellationToken ct)
    {
        var moves = await Moves.Load<Sample>(db, heatId, known, ct);
        var samples = await Laboratory.SampleRows.Load(db, db.Samples.Where(s => s.HeatId == heatId), known, ct);
        return [.. samples.Select(s => s with { Origin = moves.Mark(s.Origin) })];
    }
}
