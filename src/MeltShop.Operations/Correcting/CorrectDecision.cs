using System.Text.Json.Serialization;
using MeltShop.Operations.Castings;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.People;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>
/// Says that the last decision about castings was not what was decided: a wrong button, a wrong ladle. A change of mind is a decision of
/// its own. Answers the decision that stands now.
/// </summary>
public sealed class CorrectDecision(Recorder recorder, TimeProvider time, PasswordAgain password) : Operation<CorrectDecision.Command, long>(recorder, time)
{
    /// <param name="DecisionId">The last one about its ladle.</param>
    /// <param name="SampleId">The last-metal sample that was seen; a release needs it.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long DecisionId, CastingVerdict Verdict, long? SampleId, string Reason)
        : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>Where it was a release, of who says so; never written into the trail.</summary>
        [JsonIgnore]
        public string? Password { get; init; }

        /// <summary>For a message or a log: without the password.</summary>
        public override string ToString() => $"{Verdict} {DecisionId}";
    }

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields)
    {
        CastingJudgement.Check(command.Verdict, command.SampleId, fields);
        fields.Text("reason", command.Reason, 500);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var wrong = await db.CastingDecisions.AsNoTracking().SingleOrDefaultAsync(d => d.Id == command.DecisionId, cancellation);
        if (await db.Standing(wrong, "decisionId", cancellation) is { } finding) return Written<long>.Refused(finding);
        if (wrong!.TestUnit is not null) return Refuse("decisionId", "correction.elsewhere"); // decide about the unit anew
        var last = await db.InForce<CastingDecision>().Where(d => d.TreatedLadleId == wrong.TreatedLadleId && d.TestUnit == null).MaxAsync(d => d.Id, cancellation);
        if (last != wrong.Id) return Refuse("decisionId", "decision.notTheLast");
        if ((wrong.Verdict, wrong.SampleId) == (command.Verdict, command.SampleId)) return Refuse("", "correction.nothing");
        var treated = await db.TreatedLadles.SingleAsync(l => l.Id == wrong.TreatedLadleId, cancellation);
        await db.LockLadles(cancellation, treated);
        var findings = await CastingJudgement.Against(writing, treated, command.SampleId, command.Verdict, command.Reason, null, cancellation);
        if (findings.Count > 0) return Written<long>.Refused(findings);
        if (command.Verdict == CastingVerdict.Release && await password.Against(db, writing.Acting.PersonId, command.Password, cancellation) is { } notTheirs)
        {
            return Written<long>.Refused(notTheirs);
        }

        var right = new CastingDecision
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = wrong.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            SupersedesId = wrong.Id,
            Reason = command.Reason,
            TreatedLadleId = wrong.TreatedLadleId,
            Verdict = command.Verdict,
            SampleId = command.SampleId,
            Seen = await SeenCastings.Now(db, treated, command.SampleId, await TestedCastings.Load(db, treated.Id, cancellation), cancellation),
            WasSigned = command.Verdict == CastingVerdict.Release,
        };
        db.Add(right);
        writing.Step(treated, command.Verdict == CastingVerdict.Release ? TreatedLadleState.Released : TreatedLadleState.Held, command.Reason);
        db.Expect(treated, treated.Version);
        await db.SaveChangesAsync(cancellation);
        return Done(
            right.Id, new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version), new ChangeNotice(ChangeKind.Heat, treated.HeatId));
    }
}
