using MeltShop.Metallurgy;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Importing.Subjects;
using MeltShop.Records;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Importing;

/// <summary>Reads files by the maps that are kept and looks up what they name; writes nothing.</summary>
public sealed class ImportDesk(IDbContextFactory<RecordsContext> contexts, TimeProvider clock)
{
    /// <summary>The rows of a file are read beside the thread that asks: they may be many.</summary>
    /// <param name="mapId">A map in use.</param>
    /// <param name="bytes">The file.</param>
    public async Task<Outcome<ImportPreview>> Look(long mapId, byte[] bytes, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var kept = await db.ImportMaps.AsNoTracking().SingleOrDefaultAsync(m => m.Id == mapId && m.IsActive, ct);
        if (kept is null) return Refused(new Finding("map", "importMap.unknown"));
        var map = RecordsJson.Value<ColumnMap>(kept.Definition)!;
        var zone = await Zone(db, ct);
        var latest = clock.GetUtcNow() + Operation<Command, long>.ClockTolerance;
        var file = await Task.Run(() => ReadFile.Of(bytes, map, zone, latest, ct), ct);
        return file.Refusal is { } refusal ? Refused(refusal) : await Look(db, file, kept.InstrumentId, kept.Id, ct);
    }

    /// <summary>The same for what came in another form than a file.</summary>
    public async Task<ImportPreview> Look(ReadFile file, long instrumentId, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return (await Look(db, file, instrumentId, null, ct)).Value;
    }

    /// <summary>The zone in which a file without offsets means its instants.</summary>
    public static async Task<TimeZoneInfo> Zone(RecordsContext db, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(db);
        var zone = await db.Sites.Select(s => s.TimeZone).FirstOrDefaultAsync(ct);
        return zone is null ? TimeZoneInfo.Utc : TimeZoneInfo.FindSystemTimeZoneById(zone);
    }

    private static async Task<Outcome<ImportPreview>> Look(RecordsContext db, ReadFile file, long instrumentId, long? mapId, CancellationToken ct) =>
        Outcome<ImportPreview>.Of(new(mapId, instrumentId, file, await SampleLookUp.Find(db, file, instrumentId, ct)));

    private static Outcome<ImportPreview> Refused(Finding finding) => Outcome<ImportPreview>.Refused([finding]);
}
