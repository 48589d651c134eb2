using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Orders;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Heats;

/// <summary>What a correction of a bath is reckoned from.</summary>
/// <param name="Grade">The grade of the heat.</param>
/// <param name="OtherGrades">The other grades in use: what else this bath could become.</param>
/// <param name="LastBath">The last bath sample in force; null where there is none.</param>
/// <param name="LastTemperatureC">The last bath temperature in force, °C; null where there is none.</param>
/// <param name="PowerKw">Rated power of the furnace, kW.</param>
/// <param name="Materials">What may be added to a bath: additions, and steel and pig iron to dilute with.</param>
/// <param name="Corrections">Those that were accepted for this heat, the latest last.</param>
public sealed record CorrectionPageView(
    HeatHeadView Heat, GradeView Grade, IReadOnlyList<GradeView> OtherGrades, SampleView? LastBath, double? LastTemperatureC, double PowerKw,
    IReadOnlyList<MaterialView> Materials, IReadOnlyList<BathCorrectionView> Corrections)
{
    /// <summary>When the last temperature was taken; null where there is none.</summary>
    public DateTimeOffset? LastTemperatureAt { get; init; }

    /// <summary>What <see cref="LastBath"/> was measured with, by its checks; null where nobody said it.</summary>
    public InstrumentState? Instrument { get; init; }

    /// <summary>Open orders that still need metal, the nearest due first.</summary>
    public IReadOnlyList<OrderView> ToPour { get; init; } = [];

    /// <summary>Metal that is planned and not started, kg by grade: plans of the last days that no heat was started from.</summary>
    public IReadOnlyDictionary<long, double> PlannedKg { get; init; } = new Dictionary<long, double>();

    /// <summary>What one point off the aim costs by the shop's rule for charges; null where it says nothing.</summary>
    public double? NearnessPrice { get; init; }
}

/// <param name="Problem">JSON.</param>
/// <param name="Answer">JSON.</param>
public sealed record BathCorrectionView(Origin Origin, long SampleId, string Goal, string Problem, string Answer, string Versions, decimal TotalCost)
{
    public long Id => Origin.FactId;

    /// <summary>What it started from and was corrected since.</summary>
    public IReadOnlyList<StaleNote> Stale { get; init; } = [];
}

/// <summary>Reads what the correction page shows and what is reckoned from it.</summary>
public sealed class CorrectionPage(IDbContextFactory<RecordsContext> contexts, TimeProvider time)
{
    /// <summary>An older plan that nobody started is taken for given up.</summary>
    public static readonly TimeSpan PlannedWithin = TimeSpan.FromDays(7);

    /// <summary>Null where there is no such heat.</summary>
    public async Task<CorrectionPageView?> Load(long heatId, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        if (await HeatHeadView.Load(db, heatId, ct) is not { } head) return null;

        var grades = (await GradeRows.Load(db.Grades.Where(g => g.IsActive || g.Id == head.GradeId), ct)).InNaturalOrder(g => g.Code);
        var bath = await SampleRows.Last(db, heatId, Records.Laboratory.SampleKinds.OfTheBath, ct);
        var temperature = await db.InForce<TemperatureReading>().Where(t => t.HeatId == heatId && t.TreatedLadleId == null)
            .OrderByDescending(t => t.ObservedAt).ThenByDescending(t => t.Id).Select(t => new { t.TemperatureC, t.ObservedAt }).FirstOrDefaultAsync(ct);
        var power = await db.Furnaces.Where(f => f.Id == head.FurnaceId).Select(f => f.PowerKw).SingleAsync(ct);
        var materials = (await MaterialRows.Load(
            db, db.Materials.Where(m => m.IsActive && ((m.Uses & MaterialUses.BathAddition) != 0
                || ((m.Uses & MaterialUses.Charge) != 0 && (m.Kind == MaterialKind.SteelScrap || m.Kind == MaterialKind.PigIron)))), ct))
            .InNaturalOrder(m => m.Code);
        return new(
            head, grades.Single(g => g.Id == head.GradeId), [.. grades.Where(g => g.Id != head.GradeId)], bath, temperature?.TemperatureC, power, materials,
            await HeatFacts.Corrections(db, heatId, null, ct))
        {
            LastTemperatureAt = temperature?.ObservedAt,
            Instrument = bath?.Instrument is { } used ? (await InstrumentStates.Load(db, [used], ct))[used.Id] : null,
            ToPour = await OrderRows.ToPour(db, ct),
            PlannedKg = await Planned(db, ct),
            NearnessPrice = await db.ChargeRules.OrderByDescending(r => r.Id).Select(r => r.NearnessPrice).FirstOrDefaultAsync(ct),
        };
    }

    private async Task<Dictionary<long, double>> Planned(RecordsContext db, CancellationToken ct)
    {
        var since = time.GetUtcNow() - PlannedWithin;
        return await db.Plans.Where(p => p.ObservedAt >= since && !db.Heats.Any(h => h.PlanId == p.Id))
            .GroupBy(p => p.GradeId).Select(g => new { g.Key, Kg = g.Sum(p => p.MeltKg) }).ToDictionaryAsync(g => g.Key, g => g.Kg, ct);
    }
}
