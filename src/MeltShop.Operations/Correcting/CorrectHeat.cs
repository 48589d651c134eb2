using MeltShop.Operations.Checking;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>
/// Puts the grade of a heat right, its furnace, when it started or ended or the heel that it started with. The ledgers of both furnaces follow.
/// Castings that were released by the windows of the other grade are held again. Answers the heat's new version.
/// </summary>
public sealed class CorrectHeat(Recorder recorder, TimeProvider time) : Operation<CorrectHeat.Command, Guid>(recorder, time)
{
    /// <param name="Version">Of the heat, as the person saw it.</param>
    /// <param name="StartedAt">When it started; null where that was right.</param>
    /// <param name="HeelKg">Liquid in the furnace when it started; null where that was right.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long HeatId, Guid Version, long GradeId, DateTimeOffset? StartedAt, string Reason, double? HeelKg = null)
        : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>The furnace that it was in; null where that was right.</summary>
        public long? FurnaceId { get; init; }

        /// <summary>When it ended; null where that was right, or it goes on.</summary>
        public DateTimeOffset? ClosedAt { get; init; }
    }

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("reason", command.Reason, 500);
        if (command.HeelKg is { } heel) fields.MassOrZero("heelKg", heel);
        if (command.StartedAt > command.ObservedAt) fields.Add("startedAt", "time.future", command.StartedAt.Value);
        if (command.ClosedAt > command.ObservedAt) fields.Add("closedAt", "time.future", command.ClosedAt.Value);
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var heat = await db.Heats.FindAsync([command.HeatId], cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (heat.Version != command.Version) return Stale(writing, heat, command.Version);
        var former = HeatSaid.Of(heat);
        var said = new HeatSaid(
            command.GradeId, command.FurnaceId ?? heat.FurnaceId, command.StartedAt ?? heat.StartedAt, command.ClosedAt ?? heat.ClosedAt, command.HeelKg ?? heat.HeelKg);
        if (said == former) return Refuse("", "correction.nothing");
        await db.LockFurnaces(cancellation, former.FurnaceId, said.FurnaceId);
        var ladles = await db.TreatedLadles.Where(l => l.HeatId == heat.Id && l.State != TreatedLadleState.Abandoned).Select(l => l.Id).ToListAsync(cancellation);
        if (await HeatPlace.Against(db, heat, said, ladles.Count > 0, cancellation) is { } finding) return Written<Guid>.Refused(finding);

        if (said.FurnaceId != former.FurnaceId)
        {
            await writing.MoveToFurnace(heat, said.FurnaceId, said.StartedAt, command.Reason, cancellation);
            if (command.HeelKg is null) said = said with { HeelKg = heat.HeelKg };
        }

        heat.StartedAt = said.StartedAt;
        if (said.HeelKg != heat.HeelKg && await writing.CorrectHeel(heat, said.HeelKg, command.Reason, cancellation) is { } full) return Written<Guid>.Refused(full);
        if (said.ClosedAt is { } closedAt && closedAt != former.ClosedAt) await writing.MoveEnd(heat, closedAt, command.Reason, cancellation);
        db.Add(said.Instead(former, writing.Stamp, heat.Id, command.Reason));
        await db.SaveChangesAsync(cancellation);
        if (said.FurnaceId != former.FurnaceId) await writing.LeaveInFurnace(heat, former, command.Reason, cancellation);
        else if ((said.ClosedAt, said.HeelKg) != (former.ClosedAt, former.HeelKg)) await writing.FollowHeel(heat, command.Reason, cancellation);
        heat.GradeId = said.GradeId;
        var held = said.GradeId == former.GradeId ? [] : await writing.Hold(ladles, command.Reason, cancellation);
        await db.SaveChangesAsync(cancellation);
        long[] furnaces = [former.FurnaceId, said.FurnaceId];
        return Done(heat.Version, [new ChangeNotice(ChangeKind.Heat, heat.Id, heat.Version), .. furnaces.Distinct().Select(id => new ChangeNotice(ChangeKind.Furnace, id)), .. held]);
    }
}

/// <summary>What is said of a heat itself and may be wrong.</summary>
internal sealed record HeatSaid(long GradeId, long FurnaceId, DateTimeOffset StartedAt, DateTimeOffset? ClosedAt, double HeelKg)
{
    public static HeatSaid Of(Heat heat) => new(heat.GradeId, heat.FurnaceId, heat.StartedAt, heat.ClosedAt, heat.HeelKg);

    /// <summary>That this is said of a heat instead of what was said before.</summary>
    public HeatCorrection Instead(HeatSaid former, Stamp stamp, long heatId, string? reason) => new()
    {
        EntryKey = stamp.EntryKey,
        PersonId = stamp.PersonId,
        ObservedAt = stamp.ObservedAt,
        EnteredAt = stamp.EnteredAt,
        Reason = reason,
        HeatId = heatId,
        GradeId = GradeId,
        FormerGradeId = former.GradeId,
        FurnaceId = FurnaceId,
        FormerFurnaceId = former.FurnaceId,
        StartedAt = StartedAt,
        FormerStartedAt = former.StartedAt,
        ClosedAt = ClosedAt,
        FormerClosedAt = former.ClosedAt,
        HeelKg = HeelKg,
        FormerHeelKg = former.HeelKg,
    };
}
