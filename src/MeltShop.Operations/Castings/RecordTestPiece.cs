using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Ladles;
using MeltShop.Records;
using MeltShop.Records.Castings;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Castings;

/// <summary>Names a test piece of a treated ladle and the castings that it speaks for.</summary>
public sealed class RecordTestPiece(Recorder recorder, TimeProvider time) : Operation<RecordTestPiece.Command, long>(recorder, time)
{
    /// <param name="ObservedAt">When it was cast.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long TreatedLadleId, string Label, TestPieceShape Shape, SampleType SampleType, double WallMm, string TestUnit)
        : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>Labels of the moulds whose castings it speaks for; empty where nobody says: then it speaks for all.</summary>
        public IReadOnlyList<string> Moulds { get; init; } = [];
    }

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields) =>
        Check(fields, command.Label, command.Shape, command.SampleType, command.WallMm, command.TestUnit);

    internal static void Check(FieldCheck fields, string label, TestPieceShape shape, SampleType sampleType, double wallMm, string testUnit)
    {
        fields.Text("label", label, 60);
        fields.Choice("shape", shape);
        fields.Choice("sampleType", sampleType);
        fields.Positive("wallMm", wallMm);
        fields.Text("testUnit", testUnit, 200);
    }

    internal static async Task<string?> UnknownMould(RecordsContext db, long treatedLadleId, IReadOnlyList<string> moulds, CancellationToken cancellation)
    {
        if (moulds.Count == 0) return null;
        var poured = await db.InForce<PouredMould>().Where(m => m.TreatedLadleId == treatedLadleId && !m.IsWithdrawn).Select(m => m.Label).ToListAsync(cancellation);
        return moulds.FirstOrDefault(m => !poured.Contains(m.Trim()));
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var treated = await db.TreatedLadles.FindAsync([command.TreatedLadleId], cancellation);
        if (treated is null) return Refuse("treatedLadleId", "ladle.unknown");
        if (treated.State is TreatedLadleState.Prepared or TreatedLadleState.Abandoned) return Refuse("treatedLadleId", "state.wrong", treated.State.ToString());
        await db.LockLadles(cancellation, treated);
        var label = command.Label.Trim();
        if (await db.InForce<TestPiece>().AnyAsync(p => p.TreatedLadleId == treated.Id && !p.IsWithdrawn && p.Label == label, cancellation)) return Refuse("label", "testPiece.known", label);

        if (await UnknownMould(db, treated.Id, command.Moulds, cancellation) is { } unknown) return Refuse("moulds", "mould.unknown", unknown);
        var piece = new TestPiece
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            TreatedLadleId = treated.Id,
            Label = label,
            Shape = command.Shape,
            SampleType = command.SampleType,
            WallMm = command.WallMm,
            TestUnit = command.TestUnit.Trim(),
            Moulds = CastingUnits.Text(command.Moulds),
        };
        db.Add(piece);
        await db.SaveChangesAsync(cancellation);
        return Done(piece.Id, new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version));
    }
}
