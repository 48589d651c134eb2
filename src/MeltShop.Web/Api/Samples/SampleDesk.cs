using System.Security.Cryptography;
using System.Text;
using MeltShop.Metallurgy;
using MeltShop.Operations.Importing;
using MeltShop.Operations.Importing.Rows;
using MeltShop.Operations.Importing.Taking;
using MeltShop.Records;
using MeltShop.Records.Importing;
using MeltShop.Records.Keeping;
using MeltShop.Web.Api.Weighings;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Api.Samples;

/// <summary>Where samples of instruments arrive: they are taken in as those of files are, so that a sample comes in once whichever way it takes.</summary>
internal sealed class SampleDesk(IDbContextFactory<RecordsContext> contexts, ImportDesk desk, ImportSamples import, TimeProvider clock)
{
    private static readonly TimeSpan ClockTolerance = TimeSpan.FromMinutes(5);

    /// <param name="station">Name of the sender's key.</param>
    /// <param name="body">As it was sent: its hash goes into the trail.</param>
    /// <returns>The sample, or the check of the instrument, the first one where it comes again; or why there is none.</returns>
    public async Task<(long? SampleId, IReadOnlyList<Finding> Findings)> Take(string station, SampleRequest request, ReadOnlyMemory<byte> body, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        var findings = new List<Finding>();
        var instrumentId = await db.Instruments.Where(i => i.Code == request.Instrument && i.IsActive).Select(i => (long?)i.Id).SingleOrDefaultAsync(cancellation);
        var by = await ScaleSender.Person(db, station, request.By, cancellation);
        if (instrumentId is null) findings.Add(new("instrument", "instrument.unknown"));
        if (by is null) findings.Add(new("by", "person.unknown", request.By));
        if (request.TakenAt > clock.GetUtcNow() + ClockTolerance) findings.Add(new("takenAt", "time.future", request.TakenAt));
        if (findings.Count > 0) return (null, findings);

        var file = FileOf(request, body);
        var before = await desk.Look(file, instrumentId!.Value, cancellation);
        if (before.Found.New.Count == 0) return Answer(before);
        var key = ScaleSender.KeyOf("sample", station, request.Id);
        var outcome = await import.Run(by!, before.Taking(key, clock.GetUtcNow(), ImportWay.Sender, request.Id), cancellation);
        // Two that come at once are one sample: what stands in the records afterwards answers both.
        var after = await desk.Look(file, instrumentId.Value, cancellation);
        return after.Found.New.Count == 0 ? Answer(after) : (null, [.. outcome.Findings.Select(f => f with { Path = f.Path.Length == 0 ? "by" : f.Path })]);
    }

    private static (long?, IReadOnlyList<Finding>) Answer(ImportPreview preview) => preview.Found.Known is [var known]
        ? (known.KnownSampleId, [])
        : (null, [.. preview.Found.Faults.Take(1).Select(f => new Finding(Place(f.Code), f.Code, f.Arguments))]);

    private static ReadFile FileOf(SampleRequest request, ReadOnlyMemory<byte> body)
    {
        var subject = new RowSubject(request.Id, request.Heat, request.Furnace, request.Ladle, request.Kind, request.Coin) { IsGrey = request.IsGrey, Reference = request.Reference };
        var takenAt = request.TakenAt.Cut();
        var text = Encoding.UTF8.GetString(body.Span);
        var rows = request.Figures.Count > 0
            ? [new ImportRow(1, subject, takenAt, 1, request.Remarks, [], text) { Figures = request.Figures }]
            : request.Burns.Select((burn, index) => new ImportRow(1, subject, takenAt, index + 1, request.Remarks, burn, index == 0 ? text : "")).ToList();
        return new(Convert.ToHexStringLower(SHA256.HashData(body.Span)), body.Length, rows.Count, [new(subject, takenAt, request.IsMeanOnly, rows)], []);
    }

    private static string Place(string code) => code switch
    {
        "reference.unknown" => "reference",
        "importFurnace.unknown" or "importFurnace.other" => "furnace",
        "importHeat.noneThen" or "importHeat.early" => "takenAt",
        "ladle.unknown" or "importLadle.noneThen" or "sample.ladleMissing" or "sample.notOfLadle" => "ladle",
        "importSample.other" => "id",
        _ => "heat",
    };
}
