using System.Text.Json.Serialization;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.People;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Castings;

/// <summary>
/// Holds, releases or scraps a test unit apart from the other castings of its ladle. What is asked of a release is what is asked of the
/// ladle's, for the moulds and test pieces of the unit. What was decided apart stays so whatever is decided about the ladle. Answers the new
/// version of the ladle.
/// </summary>
public sealed class DecideUnit(Recorder recorder, TimeProvider time, PasswordAgain password) : Operation<DecideUnit.Command, Guid>(recorder, time)
{
    /// <param name="TestUnit">As its test pieces name it.</param>
    /// <param name="SampleId">The last-metal sample that was seen; a release needs it.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long TreatedLadleId, Guid Version, string TestUnit, CastingVerdict Verdict, long? SampleId, string? Reason)
        : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>For a release, of who releases; never written into the trail.</summary>
        [JsonIgnore]
        public string? Password { get; init; }

        /// <summary>For a message or a log: without the password.</summary>
        public override string ToString() => $"{Verdict} {TreatedLadleId} {TestUnit}";
    }

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields)
    {
        CastingJudgement.Check(command.Verdict, command.SampleId, fields);
        fields.Text("testUnit", command.TestUnit, 200);
        fields.Text("reason", command.Reason, 500); // why it is another than its ladle's
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var treated = await db.TreatedLadles.FindAsync([command.TreatedLadleId], cancellation);
        if (treated is null) return Refuse("treatedLadleId", "ladle.unknown");
        await db.LockLadles(cancellation, treated);
        if (treated.Version != command.Version) return Stale(writing, treated, command.Version);
        if (treated.State is not (TreatedLadleState.Pouring or TreatedLadleState.Held or TreatedLadleState.Released))
        {
            return Refuse("treatedLadleId", "state.wrong", treated.State.ToString());
        }

        if (command.Verdict != CastingVerdict.Hold && !writing.Acting.HoldsAny(CastingJudgement.ReleaseRoles))
        {
            return Refuse("", "right.missing", string.Join(", ", CastingJudgement.ReleaseRoles));
        }

        if ((await CastingUnits.Load(db, treated.Id, cancellation)).Of(command.TestUnit) is not { } unit) return Refuse("testUnit", "testUnit.unknown", command.TestUnit.Trim());
        if (unit.Apart == CastingVerdict.Scrap || unit.Apart == command.Verdict || await LastDecision.IsScrap(db, treated.Id, cancellation)) return Refuse("testUnit", "testUnit.decided", unit.Name);
        var findings = await CastingJudgement.Against(writing, treated, command.SampleId, command.Verdict, command.Reason, unit, cancellation);
        if (findings.Count > 0) return Written<Guid>.Refused(findings);
        if (command.Verdict == CastingVerdict.Release && await password.Against(db, writing.Acting.PersonId, command.Password, cancellation) is { } wrong)
        {
            return Written<Guid>.Refused(wrong);
        }

        var tests = (await TestedCastings.Load(db, treated.Id, cancellation)).Where(t => CastingUnits.IsSame(t.Piece.TestUnit, unit.Name)).ToList();
        db.Add(new CastingDecision
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            Reason = command.Reason,
            TreatedLadleId = treated.Id,
            Verdict = command.Verdict,
            TestUnit = unit.Name,
            SampleId = command.SampleId,
            Seen = await SeenCastings.Now(db, treated, command.SampleId, tests, cancellation),
            WasSigned = command.Verdict == CastingVerdict.Release,
        });
        db.Expect(treated, command.Version);
        await db.SaveChangesAsync(cancellation);
        return Done(
            treated.Version,
            new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version),
            new ChangeNotice(ChangeKind.Heat, treated.HeatId));
    }
}
