using System.Text.Json.Serialization;
using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.People;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Castings;

/// <summary>
/// Releases held castings as another grade: every test piece meets all that the grade asks of it, the castings were marked anew, and the
/// customer has consented. An inspector does it with their password. Answers the new version.
/// </summary>
public sealed class DowngradeCastings(Recorder recorder, TimeProvider time, PasswordAgain password) : Operation<DowngradeCastings.Command, Guid>(recorder, time)
{
    /// <param name="GradeId">The grade that the castings are from now on.</param>
    /// <param name="ReMarking">How they were marked anew.</param>
    /// <param name="Consent">Who consented for the customer, when, and in which paper.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long TreatedLadleId, Guid Version, long GradeId, string ReMarking, string Consent, string Reason)
        : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>Never written into the trail.</summary>
        [JsonIgnore]
        public string? Password { get; init; }

        /// <summary>For a message or a log: without the password.</summary>
        public override string ToString() => $"{nameof(DowngradeCastings)} {TreatedLadleId}";
    }

    public override IReadOnlyList<string> Roles { get; } = [Role.Inspector];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("reMarking", command.ReMarking, 200);
        fields.Text("consent", command.Consent, 200);
        fields.Text("reason", command.Reason, 500);
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var treated = await db.TreatedLadles.FindAsync([command.TreatedLadleId], cancellation);
        if (treated is null) return Refuse("treatedLadleId", "ladle.unknown");
        await db.LockLadles(cancellation, treated);
        if (treated.Version != command.Version) return Stale(writing, treated, command.Version);
        if (treated.State != TreatedLadleState.Held || await LastDecision.IsScrap(db, treated.Id, cancellation)) return Refuse("treatedLadleId", "state.wrong", treated.State.ToString());
        var grade = await db.Grades.AsNoTracking().SingleOrDefaultAsync(g => g.Id == command.GradeId, cancellation);
        if (grade is null) return Refuse("gradeId", "grade.unknown");
        if (grade.Id == await CastGrade.Id(db, treated.Id, cancellation)) return Refuse("gradeId", "downgrade.sameGrade");
        if (GradeProperties.For(grade.Code) is null) return Refuse("gradeId", "downgrade.noStandard", grade.Code);
        var tests = await TestedCastings.Load(db, treated.Id, grade.Id, cancellation);
        List<Finding> findings = [.. Against(tests)];
        if (findings.Count > 0) return Written<Guid>.Refused(findings);
        if (await password.Against(db, writing.Acting.PersonId, command.Password, cancellation) is { } wrong) return Written<Guid>.Refused(wrong);

        var sampleId = await db.InForce<Sample>().Where(s => s.TreatedLadleId == treated.Id && s.Kind == SampleKind.LastMetal && s.Means.Count > 0)
            .OrderByDescending(s => s.ObservedAt).ThenByDescending(s => s.Id).Select(s => (long?)s.Id).FirstOrDefaultAsync(cancellation);
        db.Add(new CastingDecision
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            Reason = command.Reason,
            TreatedLadleId = treated.Id,
            Verdict = CastingVerdict.Downgrade,
            SampleId = sampleId,
            Seen = await SeenCastings.Now(db, treated, sampleId, tests, cancellation),
            WasSigned = true,
            GradeId = grade.Id,
            ReMarking = command.ReMarking.Trim(),
            Consent = command.Consent.Trim(),
        });
        writing.Step(treated, TreatedLadleState.Released, command.Reason);
        db.Expect(treated, command.Version);
        await db.SaveChangesAsync(cancellation);
        return Done(
            treated.Version, new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version), new ChangeNotice(ChangeKind.Heat, treated.HeatId));
    }

    // Not tested is not met, and a standard that leaves all to an agreement shows nothing by itself.
    private static IEnumerable<Finding> Against(IReadOnlyList<TestedPiece> tests)
    {
        if (tests.Count == 0) return [new("gradeId", "downgrade.noTest")];
        return tests.SelectMany(t => t.Verdicts.Any(v => v.Standing == PropertyStanding.Meets)
            ? t.Verdicts.Where(v => v.Standing is PropertyStanding.Fails or PropertyStanding.NotTested).Select(v => new Finding(
                "gradeId", v.Standing == PropertyStanding.Fails ? "test.fails" : "test.missing", t.Piece.Label, v.Property.ToString(), v.Value ?? 0))
            : [new Finding("gradeId", "downgrade.notShown", t.Piece.Label)]);
    }
}
