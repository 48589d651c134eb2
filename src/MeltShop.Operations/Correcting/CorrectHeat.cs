using MeltShop.Operations.Checking;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>
/// Puts the grade of a heat right, when it started or the heel that it started with. Castings that were released by the windows of the other grade are held again.
/// Answers the heat's new version.
/// </summary>
public sealed class CorrectHeat(Recorder recorder, TimeProvider time) : Operation<CorrectHeat.Command, Guid>(recorder, time)
{
    /// <param name="Version">Of the heat, as the person saw it.</param>
    /// <param name="StartedAt">When it started; null where that was right.</param>
    /// <param name="HeelKg">Liquid in the furnace when it started; null where that was right.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long HeatId, Guid Version, long GradeId, DateTimeOffset? StartedAt, string Reason, double? HeelKg = null)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("reason", command.Reason, 500);
        if (command.HeelKg is { } heel) fields.MassOrZero("heelKg", heel);
        if (command.StartedAt > command.ObservedAt) fields.Add("startedAt", "time.future", command.StartedAt.Value);
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var heat = await db.Heats.FindAsync([command.HeatId], cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (heat.Version != command.Version) return Stale(writing, heat, command.Version);
        var families = await db.Grades.Where(g => g.Id == command.GradeId || g.Id == heat.GradeId).ToDictionaryAsync(g => g.Id, g => g.Family, cancellation);
        if (!families.TryGetValue(command.GradeId, out var family)) return Refuse("gradeId", "grade.unknown");
        var startedAt = command.StartedAt ?? heat.StartedAt;
        if (heat.ClosedAt is { } closed && startedAt > closed) return Refuse("startedAt", "heat.endedBefore", closed);
        var (heelKg, formerHeelKg) = (command.HeelKg ?? heat.HeelKg, heat.HeelKg);
        if ((heat.GradeId, heat.StartedAt, heat.HeelKg) == (command.GradeId, startedAt, heelKg)) return Refuse("", "correction.nothing");
        var ladles = await db.TreatedLadles.Where(l => l.HeatId == heat.Id && l.State != TreatedLadleState.Abandoned).Select(l => l.Id).ToListAsync(cancellation);
        if (family != families[heat.GradeId] && ladles.Count > 0) return Refuse("gradeId", "grade.otherRoute");

        if (heelKg != formerHeelKg && await writing.CorrectHeel(heat, heelKg, command.Reason, cancellation) is { } finding) return Written<Guid>.Refused(finding);
        db.Add(new HeatCorrection
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            Reason = command.Reason,
            HeatId = heat.Id,
            GradeId = command.GradeId,
            FormerGradeId = heat.GradeId,
            StartedAt = startedAt,
            FormerStartedAt = heat.StartedAt,
            HeelKg = heelKg,
            FormerHeelKg = formerHeelKg,
        });
        if (heelKg != formerHeelKg) await writing.FollowHeel(heat, command.Reason, cancellation);
        var held = heat.GradeId == command.GradeId ? [] : await writing.Hold(ladles, command.Reason, cancellation);
        (heat.GradeId, heat.StartedAt) = (command.GradeId, startedAt);
        await db.SaveChangesAsync(cancellation);
        return Done(heat.Version, [new ChangeNotice(ChangeKind.Heat, heat.Id, heat.Version), new ChangeNotice(ChangeKind.Furnace, heat.FurnaceId), .. held]);
    }
}
