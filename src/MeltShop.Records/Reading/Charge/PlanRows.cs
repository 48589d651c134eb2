using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Charge;

/// <summary>Reads one stored plan.</summary>
internal static class PlanRows
{
    public static async Task<PlanView?> Load(RecordsContext db, long id, CancellationToken ct)
    {
        if ((await db.Rows(db.Plans.Where(p => p.Id == id), ct)).SingleOrDefault() is not { } row) return null;
        var plan = row.Fact;
        var heats = await db.Heats.Where(h => h.PlanId == id).OrderBy(h => h.Id).Take(Facts.Most)
            .Select(h => new PlannedHeat(h.Id, h.Number, h.State)).ToListAsync(ct);
        return new(row.Origin, plan.FurnaceId, plan.GradeId, plan.MeltKg, plan.Problem, plan.Answer, plan.Versions, plan.TotalCost, heats)
        {
            FurnaceName = await db.Furnaces.Where(f => f.Id == plan.FurnaceId).Select(f => f.Name).SingleAsync(ct),
            Choice = plan.Choice,
            GradeCode = await db.Grades.Where(g => g.Id == plan.GradeId).Select(g => g.Code).SingleAsync(ct),
        };
    }
}
