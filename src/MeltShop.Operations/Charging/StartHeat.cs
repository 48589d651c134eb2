using MeltShop.Operations.Checking;
using MeltShop.Operations.Heats;
using MeltShop.Records.Heats;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Charging;

/// <summary>Starts a heat from a plan; the app gives its number. What was in the furnace when it started is its heel, also where the start arrives late.</summary>
public sealed class StartHeat(Recorder recorder, TimeProvider time) : Operation<StartHeat.Command, StartHeat.Result>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long PlanId) : Operations.Command(EntryKey, ObservedAt);

    public sealed record Result(long HeatId, string Number);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        // Nothing of it can be wrong before the records are asked.
    }

    protected override async Task<Written<Result>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var plan = await db.Plans.FindAsync([command.PlanId], cancellation);
        if (plan is null) return Refuse("planId", "plan.unknown");
        var site = await db.Sites.SingleOrDefaultAsync(cancellation);
        if (site is null) return Refuse("planId", "site.missing");
        await db.LockFurnace(plan.FurnaceId, cancellation);
        var before = await db.Heats
            .Where(h => h.FurnaceId == plan.FurnaceId)
            .FirstOrDefaultAsync(h => h.State == HeatState.Charging || h.State == HeatState.Bath || h.State == HeatState.Tapping, cancellation);
        if (before is not null) return Refuse("planId", "furnace.busy", before.Number);
        var later = await db.HeatsInAFurnace().Where(h => h.FurnaceId == plan.FurnaceId && h.ClosedAt > writing.Stamp.ObservedAt)
            .OrderBy(h => h.StartedAt).Select(h => h.Number).FirstOrDefaultAsync(cancellation);
        if (later is not null) return Refuse("planId", "furnace.taken", later); // a start that arrives late: two heats never share a furnace
        if (!await db.Furnaces.AnyAsync(f => f.Id == plan.FurnaceId && f.IsActive, cancellation)) return Refuse("planId", "furnace.outOfUse");
        if (!await db.Grades.AnyAsync(g => g.Id == plan.GradeId && g.IsActive, cancellation)) return Refuse("planId", "grade.outOfUse");

        var heat = new Heat
        {
            Number = await HeatNumbers.Next(db, site, writing.Stamp.ObservedAt, cancellation),
            SiteId = site.Id,
            FurnaceId = plan.FurnaceId,
            GradeId = plan.GradeId,
            PlanId = plan.Id,
            State = HeatState.Charging,
            StartedAt = writing.Stamp.ObservedAt,
            HeelKg = await db.InFurnace(plan.FurnaceId, writing.Stamp.ObservedAt, cancellation),
        };
        db.Add(heat);
        await db.SaveChangesAsync(cancellation);
        writing.Came(heat, HeatState.Charging);
        return Done(
            new Result(heat.Id, heat.Number),
            new ChangeNotice(ChangeKind.Heat, heat.Id, heat.Version),
            new ChangeNotice(ChangeKind.Furnace, heat.FurnaceId));
    }
}
