using System.Text.Json.Serialization;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Importing.Rows;
using MeltShop.Operations.Importing.Subjects;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Importing;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Importing.Taking;

/// <summary>
/// Takes in the new samples of a file, all of them in one transaction and with one entry of the trail, as they were previewed: if the
/// records have changed since in a way that changes what would be taken in, nothing is. Samples that came in before stay as they are.
/// </summary>
public sealed class ImportSamples(Recorder recorder, TimeProvider time) : Operation<ImportSamples.Command, ImportSamples.Result>(recorder, time)
{
    /// <summary>Reasons that are kept with a file.</summary>
    private const int MostReasons = 1000;

    /// <param name="MapId">The map that it was read by; null where the sender named everything itself.</param>
    /// <param name="Name">Of the file, or the sender's own name of what it sent.</param>
    /// <param name="Sha256">Of its bytes.</param>
    /// <param name="Rows">That it holds.</param>
    /// <param name="NewRows">That the preview found to be taken in.</param>
    /// <param name="KnownRows">That the preview found to be here already.</param>
    /// <param name="RefusedRows">That the preview refused.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long? MapId, long InstrumentId, ImportWay Way, string Name, string Sha256, long Bytes, int Rows,
        int NewRows, int KnownRows, int RefusedRows) : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>What was read. The trail holds it row by row, as it was written.</summary>
        [JsonIgnore]
        public ReadFile File { get; init; } = new("", 0, 0, [], []);
    }

    /// <param name="Samples">That were taken in, checks of the instrument among them.</param>
    /// <param name="FirstSampleId">The first of the samples that were taken in; 0 where all were checks of the instrument.</param>
    public sealed record Result(long FileId, int Samples, int Rows, long FirstSampleId);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Choice("way", command.Way);
        fields.Text("name", command.Name, 260);
        if (command.File.Refusal is { } refusal) fields.AddAll([refusal]);
        else if (command.NewRows == 0) fields.Add("file", "importFile.nothing");
    }

    protected override async Task<Written<Result>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        if (!await db.Instruments.AnyAsync(i => i.Id == command.InstrumentId && i.IsActive, cancellation)) return Refuse("instrument", "instrument.unknown");
        if (command.MapId is { } map && !await db.ImportMaps.AnyAsync(m => m.Id == map && m.IsActive && m.InstrumentId == command.InstrumentId, cancellation))
            return Refuse("map", "importMap.unknown");

        var found = await SampleLookUp.Find(db, command.File, command.InstrumentId, cancellation);
        if ((found.NewRows, found.KnownRows, found.RefusedRows) != (command.NewRows, command.KnownRows, command.RefusedRows)) return Refuse("file", "importFile.changed");

        var file = FileOf(writing.Stamp, command, found);
        db.Add(file);
        await db.SaveChangesAsync(cancellation);
        var samples = found.New.Where(s => s.ReferenceId is null).ToList();
        var checks = found.New.Where(s => s.ReferenceId is not null).ToList();
        var rows = await Taking.NewRows.Of(writing, samples, command.InstrumentId, file.Id, cancellation);
        await rows.Write(db, cancellation);
        await NewChecks.Write(writing, checks, command.InstrumentId, file.Id, cancellation);
        var notices = await Came(writing, samples, cancellation);
        var held = await HoldLow(writing, rows, cancellation);
        if (checks.Count > 0) notices = [.. notices, new(ChangeKind.Instrument, command.InstrumentId)];
        return Done(new(file.Id, found.New.Count, found.NewRows, rows.Samples.Count > 0 ? rows.Samples[0].Id : 0), [new(ChangeKind.Import, file.Id), .. notices, .. held]);
    }

    private static ImportedFile FileOf(Stamp stamp, Command command, FoundSamples found) => new()
    {
        EntryKey = stamp.EntryKey,
        PersonId = stamp.PersonId,
        ObservedAt = stamp.ObservedAt,
        EnteredAt = stamp.EnteredAt,
        ImportMapId = command.MapId,
        Way = command.Way,
        Name = command.Name,
        Sha256 = command.Sha256,
        Bytes = command.Bytes,
        Rows = command.Rows,
        NewRows = found.NewRows,
        KnownRows = found.KnownRows,
        RefusedRows = found.RefusedRows,
        Samples = found.New.Count,
        Refusals = RefusedRows.Text(found.Faults.Take(MostReasons)),
    };

    /// <summary>What was released of ladles whose treated iron came back with too little magnesium, by the lowest sample of each.</summary>
    private static async Task<IReadOnlyList<ChangeNotice>> HoldLow(Writing writing, NewRows rows, CancellationToken cancellation)
    {
        var magnesium = rows.Means.Where(m => m.Element == Element.Mg).ToDictionary(m => m.SampleId, m => m.Percent);
        var lowest = rows.Samples.Where(s => s.TreatedLadleId is not null && SampleKinds.Treated.Contains(s.Kind) && magnesium.ContainsKey(s.Id))
            .GroupBy(s => s.TreatedLadleId!.Value, s => magnesium[s.Id]).ToDictionary(g => g.Key, g => g.Min());
        var held = new List<ChangeNotice>();
        foreach (var id in await writing.Db.Under(lowest, cancellation)) held.AddRange(await writing.HoldLow(id, lowest[id], cancellation));
        return held;
    }

    /// <summary>What the samples say of their heats and ladles.</summary>
    private static async Task<IReadOnlyList<ChangeNotice>> Came(Writing writing, IReadOnlyList<FoundSample> samples, CancellationToken cancellation)
    {
        var heatIds = samples.Select(s => s.HeatId).Distinct().ToList();
        var ladleIds = samples.Where(s => s.TreatedLadleId is not null).Select(s => s.TreatedLadleId!.Value).Distinct().ToList();
        // A heat that is being ended waits until this is written and sees the samples; one that was ended meanwhile is read as ended, and its heel follows.
        await writing.Db.LockHeats(cancellation, await writing.Db.Heats.Where(h => EF.Parameter(heatIds).Contains(h.Id) && h.ClosedAt == null).Select(h => h.Id).ToListAsync(cancellation));
        var heats = await writing.Db.Heats.Where(h => EF.Parameter(heatIds).Contains(h.Id)).ToDictionaryAsync(h => h.Id, cancellation);
        var ladles = await writing.Db.TreatedLadles.Where(l => EF.Parameter(ladleIds).Contains(l.Id)).ToDictionaryAsync(l => l.Id, cancellation);
        foreach (var sample in samples)
            writing.Came(sample.Sample.Subject.Kind, heats[sample.HeatId], sample.TreatedLadleId is { } id ? ladles[id] : null);
        await writing.Db.SaveChangesAsync(cancellation);
        await writing.FollowLastHeels(samples.Where(s => SampleKinds.OfTheBath.Contains(s.Sample.Subject.Kind)).Select(s => s.HeatId).ToHashSet(), cancellation);
        return
        [
            .. heats.Values.Select(h => new ChangeNotice(ChangeKind.Heat, h.Id, h.Version)),
            .. ladles.Values.Select(l => new ChangeNotice(ChangeKind.TreatedLadle, l.Id, l.Version)),
        ];
    }
}
