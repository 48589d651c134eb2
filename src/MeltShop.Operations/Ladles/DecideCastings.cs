using System.Text.Json.Serialization;
using MeltShop.Operations.Castings;
using MeltShop.Operations.Checking;
using MeltShop.Operations.People;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>
/// Holds, releases or scraps the castings of a treated ladle. Anybody at the furnace may hold. A release needs the last sample of the
/// ladle's last metal: a prediction never releases; and the password of who releases. Out of its window only an inspector releases, with
/// a reason. What was seen is kept. Answers the new version.
/// </summary>
public sealed class DecideCastings(Recorder recorder, TimeProvider time, PasswordAgain password) : Operation<DecideCastings.Command, Guid>(recorder, time)
{
    /// <param name="SampleId">The last-metal sample that was seen; a release needs it.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long TreatedLadleId, Guid Version, CastingVerdict Verdict, long? SampleId, string? Reason)
        : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>For a release, of who releases; never written into the trail.</summary>
        [JsonIgnore]
        public string? Password { get; init; }

        /// <summary>For a message or a log: without the password.</summary>
        public override string ToString() => $"{Verdict} {TreatedLadleId}";
    }

    /// <summary>Who may release and scrap; the others at a ladle hold.</summary>
    public static IReadOnlyList<string> ReleaseRoles => CastingJudgement.ReleaseRoles;

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields)
    {
        CastingJudgement.Check(command.Verdict, command.SampleId, fields);
        fields.OptionalText("reason", command.Reason, 500);
        if (command.Verdict == CastingVerdict.Scrap) fields.Text("reason", command.Reason, 500);
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var treated = await db.TreatedLadles.FindAsync([command.TreatedLadleId], cancellation);
        if (treated is null) return Refuse("treatedLadleId", "ladle.unknown");
        await db.LockLadles(cancellation, treated); // what is seen here stands until it is decided
        if (treated.Version != command.Version) return Stale(writing, treated, command.Version);
        if (command.Verdict != CastingVerdict.Hold && !writing.Acting.HoldsAny(CastingJudgement.ReleaseRoles))
        {
            return Refuse("", "right.missing", string.Join(", ", CastingJudgement.ReleaseRoles));
        }

        var last = await LastDecision.Of(db, treated.Id, cancellation);
        if (!MayBeDecided(treated.State, command.Verdict, last)) return Refuse("treatedLadleId", "state.wrong", treated.State.ToString());
        if (treated.State == TreatedLadleState.Released && string.IsNullOrWhiteSpace(command.Reason)) return Refuse("reason", "text.missing");
        var findings = await CastingJudgement.Against(writing, treated, command.SampleId, command.Verdict, command.Reason, null, cancellation);
        if (findings.Count > 0) return Written<Guid>.Refused(findings);
        if (command.Verdict == CastingVerdict.Release && await password.Against(db, writing.Acting.PersonId, command.Password, cancellation) is { } wrong)
        {
            return Written<Guid>.Refused(wrong);
        }

        db.Add(new CastingDecision
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            Reason = command.Reason,
            TreatedLadleId = treated.Id,
            Verdict = command.Verdict,
            SampleId = command.SampleId,
            Seen = await SeenCastings.Now(db, treated, command.SampleId, await TestedCastings.Load(db, treated.Id, cancellation), cancellation),
            WasSigned = command.Verdict == CastingVerdict.Release,
        });
        writing.Step(treated, command.Verdict == CastingVerdict.Release ? TreatedLadleState.Released : TreatedLadleState.Held);
        db.Expect(treated, command.Version);
        await db.SaveChangesAsync(cancellation);
        return Done(
            treated.Version,
            new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version),
            new ChangeNotice(ChangeKind.Heat, treated.HeatId));
    }

    // What is scrap stays scrap; what was never tapped, or still reacts, has no castings to release.
    private static bool MayBeDecided(TreatedLadleState state, CastingVerdict verdict, CastingDecision? last) =>
        last?.Verdict != CastingVerdict.Scrap && state switch
        {
            TreatedLadleState.Pouring or TreatedLadleState.Held => true,
            TreatedLadleState.Released => verdict != CastingVerdict.Release,
            _ => false,
        };
}
