using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Castings;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Castings;

/// <summary>
/// Records what a test piece was tested for. A property that has a result already is corrected, which takes a reason; what was released
/// is held again where a result fails, or where one that the release rested on is corrected.
/// </summary>
public sealed class RecordTestResults(Recorder recorder, TimeProvider time) : Operation<RecordTestResults.Command, IReadOnlyList<PropertyVerdict>>(recorder, time)
{
    /// <param name="ObservedAt">When it was tested.</param>
    /// <param name="Method">Standard, instrument or magnification; may be empty.</param>
    /// <param name="Reason">Why a result is corrected; required only then.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long TestPieceId, IReadOnlyDictionary<CastProperty, double> Values, string? Method = null, string? Reason = null)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields)
    {
        if (command.Values.Count == 0) fields.Add("values", "number.missing");
        foreach (var (property, value) in command.Values)
        {
            var path = $"values.{property}";
            fields.Choice(path, property);
            if (!fields.Number(path, value)) continue;
            var (least, most) = TestRange.Of(property);
            if (value < least) fields.Add(path, "number.tooSmall", least);
            if (value > most) fields.Add(path, "number.tooLarge", most);
        }

        fields.OptionalText("method", command.Method, 200);
        fields.OptionalText("reason", command.Reason, 500);
    }

    protected override async Task<Written<IReadOnlyList<PropertyVerdict>>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var piece = await db.InForce<TestPiece>().SingleOrDefaultAsync(p => p.Id == command.TestPieceId && !p.IsWithdrawn, cancellation);
        if (piece is null) return Refuse("testPieceId", "testPiece.unknown");
        var treated = await db.TreatedLadles.SingleAsync(l => l.Id == piece.TreatedLadleId, cancellation);
        await db.LockLadles(cancellation, treated); // or two first results at once would both stand
        var standing = (await TestedCastings.Load(db, piece.TreatedLadleId, cancellation)).Single(p => p.Piece.Id == piece.Id).Results.ToDictionary(r => r.Property);
        var corrects = command.Values.Keys.Any(standing.ContainsKey);
        if (corrects && string.IsNullOrWhiteSpace(command.Reason)) return Refuse("reason", "text.missing");

        foreach (var (property, value) in command.Values)
        {
            var former = standing.GetValueOrDefault(property);
            db.Add(new TestResult
            {
                EntryKey = writing.Stamp.EntryKey,
                PersonId = writing.Stamp.PersonId,
                ObservedAt = writing.Stamp.ObservedAt,
                EnteredAt = writing.Stamp.EnteredAt,
                SupersedesId = former?.Id,
                Reason = former is null ? null : command.Reason,
                TestPieceId = piece.Id,
                Property = property,
                Value = value,
                Method = command.Method,
            });
        }

        await db.SaveChangesAsync(cancellation);
        var verdicts = (await TestedCastings.Load(db, piece.TreatedLadleId, cancellation)).Single(p => p.Piece.Id == piece.Id).Verdicts;
        var fails = verdicts.Any(v => v.Standing == PropertyStanding.Fails);
        IReadOnlyList<ChangeNotice> held = corrects || fails ? await writing.Hold([piece.TreatedLadleId], command.Reason ?? piece.Label, cancellation) : [];
        return Done(verdicts, [new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version), .. held]);
    }
}
