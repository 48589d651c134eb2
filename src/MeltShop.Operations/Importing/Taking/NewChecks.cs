using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Importing.Subjects;
using MeltShop.Records.Importing;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Importing.Taking;

/// <summary>The checks of an instrument that a file brings; they are few, beside the samples.</summary>
internal static class NewChecks
{
    public static async Task Write(Writing writing, IReadOnlyList<FoundSample> checks, long instrumentId, long fileId, CancellationToken ct)
    {
        var controls = checks.Select(check => Row(writing, check, instrumentId)).ToList();
        writing.Db.AddRange(controls);
        await writing.Db.SaveChangesAsync(ct);
        writing.Db.AddRange(checks.Zip(controls, (check, control) => new ImportedCheck
        {
            ImportedFileId = fileId, ControlSampleId = control.Id, Identity = check.Identity, Line = check.Sample.Line, Text = check.Sample.Text,
        }));
        await writing.Db.SaveChangesAsync(ct);
    }

    private static ControlSample Row(Writing writing, FoundSample check, long instrumentId) => new()
    {
        EntryKey = writing.Stamp.EntryKey,
        PersonId = writing.Stamp.PersonId,
        ObservedAt = check.Sample.TakenAt,
        EnteredAt = writing.Stamp.EnteredAt,
        InstrumentId = instrumentId,
        ReferenceMaterialId = check.ReferenceId!.Value,
        Remarks = check.Sample.Remarks,
        Readings =
        [
            .. check.Sample.Burns.SelectMany((burn, index) => burn.Readings.Select(r => new ControlReading
            {
                Ordinal = index + 1, Element = Element.Parse(r.Element), Percent = r.Percent, BelowDetection = r.BelowDetection, InstrumentText = r.InstrumentText,
            })),
        ],
    };
}
