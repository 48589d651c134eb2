using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Castings;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Castings;

/// <summary>
/// Puts a test piece right, or says that there was none; what was tested goes with it. The former row stays readable, and released
/// castings are held again: their release rested on it. Answers the row that stands now.
/// </summary>
public sealed class CorrectTestPiece(Recorder recorder, TimeProvider time) : Operation<CorrectTestPiece.Command, long>(recorder, time)
{
    /// <param name="IsWithdrawn">There is no such piece; its results count no more.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long TestPieceId, string Label, TestPieceShape Shape, SampleType SampleType, double WallMm, string TestUnit,
        bool IsWithdrawn, string Reason) : Operations.Command(EntryKey, ObservedAt)
    {
        /// <inheritdoc cref="RecordTestPiece.Command.Moulds"/>
        public IReadOnlyList<string> Moulds { get; init; } = [];
    }

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields)
    {
        RecordTestPiece.Check(fields, command.Label, command.Shape, command.SampleType, command.WallMm, command.TestUnit);
        fields.Text("reason", command.Reason, 500);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var wrong = await db.TestPieces.AsNoTracking().SingleOrDefaultAsync(p => p.Id == command.TestPieceId, cancellation);
        if (wrong is null) return Refuse("testPieceId", "testPiece.unknown");
        var treated = await db.TreatedLadles.SingleAsync(l => l.Id == wrong.TreatedLadleId, cancellation);
        await db.LockLadles(cancellation, treated);
        if (await db.Standing(wrong, "testPieceId", cancellation) is { } finding) return Written<long>.Refused(finding);
        if (wrong.IsWithdrawn) return Refuse("testPieceId", "testPiece.unknown");
        var label = command.Label.Trim();
        if (await db.InForce<TestPiece>().AnyAsync(p => p.TreatedLadleId == treated.Id && p.Id != wrong.Id && !p.IsWithdrawn && p.Label == label, cancellation))
        {
            return Refuse("label", "testPiece.known", label);
        }

        if (await RecordTestPiece.UnknownMould(db, treated.Id, command.Moulds, cancellation) is { } unknown) return Refuse("moulds", "mould.unknown", unknown);
        var right = new TestPiece
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = wrong.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            SupersedesId = wrong.Id,
            Reason = command.Reason,
            TreatedLadleId = wrong.TreatedLadleId,
            Label = label,
            Shape = command.Shape,
            SampleType = command.SampleType,
            WallMm = command.WallMm,
            TestUnit = command.TestUnit.Trim(),
            Moulds = CastingUnits.Text(command.Moulds),
            IsWithdrawn = command.IsWithdrawn,
        };
        db.Add(right);
        await db.SaveChangesAsync(cancellation);
        var held = await writing.Hold([treated.Id], command.Reason, cancellation);
        return Done(right.Id, [new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version), .. held]);
    }
}
