using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Charge;

/// <summary>What a charge is planned from, and plans that were stored.</summary>
public sealed class ChargePage(IDbContextFactory<RecordsContext> contexts)
{
    public async Task<ChargeView> Load(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await Load(db, ct);
    }

    /// <summary>The same as it stands inside a transaction, for the operation that stores a plan.</summary>
    public static async Task<ChargeView> Load(RecordsContext db, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(db);
        var furnaces = await FurnaceRows.Load(db, ct);
        var grades = await GradeRows.Load(db.Grades.Where(g => g.IsActive), ct);
        var materials = await MaterialRows.Load(
            db, db.Materials.Where(m => m.IsActive && (m.Uses & MaterialUses.Charge) != 0), ct);
        var currency = await db.Sites.Select(s => s.Currency).FirstOrDefaultAsync(ct);
        return new(furnaces, grades.InNaturalOrder(g => g.Code), await db.WithLots(materials.InNaturalOrder(m => m.Code), ct), currency)
        {
            RouteMaterials = await RouteMaterials(db, grades, ct),
            Rule = await db.ChargeRules.AsNoTracking().OrderByDescending(r => r.Id).FirstOrDefaultAsync(ct),
            Ladles = (await db.Ladles.Where(l => l.IsActive)
                .Select(l => new ChargeLadleView(l.Id, l.Code, l.Name, l.MgRecoveryPercent, l.RecoveryTemperatureC, l.MgFadePercentPerMinute)).ToListAsync(ct)).InNaturalOrder(l => l.Code),
        };
    }

    /// <summary>The answer of the last plan that a heat of this grade was started from, as JSON; null where there was none.</summary>
    public async Task<string?> LastAnswer(long gradeId, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await db.Heats.Where(h => h.GradeId == gradeId).OrderByDescending(h => h.StartedAt).ThenByDescending(h => h.Id)
            .Join(db.Plans, h => h.PlanId, p => p.Id, (h, p) => p.Answer).FirstOrDefaultAsync(ct);
    }

    /// <summary>
    /// What was weighed in for the last heat of this grade whose charge is whole, kg by code; empty where there was none. A correction of a
    /// weighing counts in its place, additions into the bath do not.
    /// </summary>
    public async Task<IReadOnlyDictionary<string, double>> LastWeighed(long gradeId, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var last = db.Heats.Where(h => h.GradeId == gradeId && h.State != HeatState.Charging && h.State != HeatState.Cancelled)
            .OrderByDescending(h => h.StartedAt).ThenByDescending(h => h.Id).Select(h => h.Id).Take(1);
        var rows = await db.Weighings
            .Where(w => last.Contains(w.HeatId) && !w.IntoBath && !db.Weighings.Any(later => later.SupersedesId == w.Id))
            .Join(db.Materials, w => w.MaterialId, m => m.Id, (w, m) => new { m.Code, w.Kg }).ToListAsync(ct);
        return rows.GroupBy(r => r.Code).ToDictionary(g => g.Key, g => g.Sum(r => r.Kg));
    }

    private static async Task<IReadOnlyList<MaterialView>> RouteMaterials(RecordsContext db, IEnumerable<GradeView> grades, CancellationToken ct)
    {
        var codes = grades.SelectMany(g => new[] { g.Recipe?.TreatmentAlloyCode, g.Recipe?.CoverCode, g.Recipe?.InoculantCode }).OfType<string>().Distinct().ToList();
        return codes.Count == 0 ? [] : await MaterialRows.Load(db, db.Materials.Where(m => m.IsActive && codes.Contains(m.Code)), ct);
    }

    /// <summary>Names of all materials by code, those no longer used too: a plan of before names them by their codes.</summary>
    public async Task<IReadOnlyDictionary<string, string>> MaterialNames(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await db.Materials.ToDictionaryAsync(m => m.Code, m => m.Name, ct);
    }

    /// <summary>A stored plan, or null.</summary>
    public async Task<PlanView?> Plan(long id, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await PlanRows.Load(db, id, ct) is { } plan ? plan with { Stale = await Staleness.OfPlan(db, plan, null, ct) } : null;
    }
}
