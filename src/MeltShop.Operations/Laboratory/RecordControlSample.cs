using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Correcting;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Laboratory;

/// <summary>
/// Records a check of an instrument on a reference material, or puts one right with a reason; the wrong one stays beside it.
/// Answers the check that stands.
/// </summary>
public sealed class RecordControlSample(Recorder recorder, TimeProvider time) : Operation<RecordControlSample.Command, long>(recorder, time)
{
    /// <param name="CorrectsId">The check that was wrong; null for a new one.</param>
    /// <param name="Reason">Why; needed with it.</param>
    /// <param name="HappenedAt">When the wrong one was made; null where that was right.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long InstrumentId, long ReferenceMaterialId, IReadOnlyList<IReadOnlyList<ReadingInput>> Burns,
        string? Remarks = null, long? CorrectsId = null, string? Reason = null, DateTimeOffset? HappenedAt = null) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields)
    {
        ReadingInputs.Check(SampleKind.Bath, command.Burns, fields);
        fields.OptionalText("remarks", command.Remarks);
        if (command.CorrectsId is not null) fields.Correction(command, command.Reason!, command.HappenedAt);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var wrong = command.CorrectsId is { } id ? await db.InForce<ControlSample>().AsNoTracking().Include(c => c.Readings).SingleOrDefaultAsync(c => c.Id == id, cancellation) : null;
        if (command.CorrectsId is not null && wrong is null) return Refuse("correctsId", "control.unknown");
        var isOld = wrong is not null;
        // What was in use then may be out of it by now.
        if (!await db.Instruments.AnyAsync(i => i.Id == command.InstrumentId && (i.IsActive || isOld), cancellation)) return Refuse("instrumentId", "instrument.unknown");
        if (!await db.ReferenceMaterials.AnyAsync(r => r.Id == command.ReferenceMaterialId && (r.IsActive || isOld), cancellation)) return Refuse("referenceMaterialId", "reference.unknown");

        var control = new ControlSample
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = wrong is null ? writing.Stamp.ObservedAt : command.HappenedAt ?? wrong.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            SupersedesId = wrong?.Id,
            Reason = wrong is null ? null : command.Reason,
            InstrumentId = command.InstrumentId,
            ReferenceMaterialId = command.ReferenceMaterialId,
            Remarks = command.Remarks,
            Readings =
            [
                .. command.Burns.SelectMany((burn, index) => burn.Select(r => new ControlReading
                {
                    Ordinal = index + 1, Element = Element.Parse(r.Element), Percent = r.Percent, BelowDetection = r.BelowDetection, InstrumentText = r.InstrumentText,
                })),
            ],
        };
        if (wrong is not null && IsSame(wrong, control)) return Refuse("", "correction.nothing");
        db.Add(control);
        await db.SaveChangesAsync(cancellation);
        long[] instruments = [command.InstrumentId, wrong?.InstrumentId ?? command.InstrumentId];
        return Done(control.Id, [.. instruments.Distinct().Select(instrument => new ChangeNotice(ChangeKind.Instrument, instrument))]);
    }

    private static bool IsSame(ControlSample wrong, ControlSample right) =>
        (wrong.InstrumentId, wrong.ReferenceMaterialId, wrong.ObservedAt, wrong.Remarks) == (right.InstrumentId, right.ReferenceMaterialId, right.ObservedAt, right.Remarks)
        && wrong.Readings.Select(Read).Order().SequenceEqual(right.Readings.Select(Read).Order());

    private static (int, Element, double, bool) Read(ControlReading reading) => (reading.Ordinal, reading.Element, reading.Percent, reading.BelowDetection);
}
