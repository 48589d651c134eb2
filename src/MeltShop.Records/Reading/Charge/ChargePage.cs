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
        var grades = await GradeRows.Load(db.Grades.Where(g => g.IsActive).OrderBy(g => g.Code).Take(GradesPage.Most + 1), ct);
        var materials = await MaterialRows.Load(
            db, db.Materials.Where(m => m.IsActive && (m.Uses & MaterialUses.Charge) != 0).OrderBy(m => m.Code).Take(YardPage.Most + 1), ct);
        var currency = await db.Sites.Select(s => s.Currency).FirstOrDefaultAsync(ct);
        return new(
            furnaces, [.. grades.Take(GradesPage.Most)], [.. materials.Take(YardPage.Most)], currency,
            grades.Count > GradesPage.Most || materials.Count > YardPage.Most);
    }

    /// <summary>A stored plan, or null.</summary>
    public async Task<PlanView?> Plan(long id, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await PlanRows.Load(db, id, ct);
    }
}
