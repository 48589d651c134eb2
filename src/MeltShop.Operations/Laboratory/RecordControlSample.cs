using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
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
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long InstrumentId, long ReferenceMaterialId, IReadOnlyList<IReadOnlyList<ReadingInput>> Burns,
        string? Remarks = null, long? CorrectsId = null, string? Reason = null) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields)
    {
        ReadingInputs.Check(SampleKind.Bath, command.Burns, fields);
        fields.OptionalText("remarks", command.Remarks);
        if (command.CorrectsId is not null) fields.Text("reason", command.Reason, 500);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        if (!await db.Instruments.AnyAsync(i => i.Id == command.InstrumentId && i.IsActive, cancellation)) return Refuse("instrumentId", "instrument.unknown");
        if (!await db.ReferenceMaterials.AnyAsync(r => r.Id == command.ReferenceMaterialId && r.IsActive, cancellation)) return Refuse("referenceMaterialId", "reference.unknown");
        var wrong = command.CorrectsId is { } id ? await db.InForce<ControlSample>().AsNoTracking().SingleOrDefaultAsync(c => c.Id == id, cancellation) : null;
        if (command.CorrectsId is not null && wrong is null) return Refuse("correctsId", "control.unknown");

        var control = new ControlSample
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = wrong?.ObservedAt ?? writing.Stamp.ObservedAt,
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
        db.Add(control);
        await db.SaveChangesAsync(cancellation);
        return Done(control.Id, new ChangeNotice(ChangeKind.Instrument, command.InstrumentId));
    }
}
