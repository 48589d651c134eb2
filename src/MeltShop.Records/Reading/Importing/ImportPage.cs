using MeltShop.Records.Importing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Importing;

/// <param name="Definition">As it is kept, JSON.</param>
public sealed record ImportMapView(long Id, Guid Version, string Name, long InstrumentId, string Instrument, string Definition, bool IsActive);

/// <inheritdoc cref="ImportedFile"/>
public sealed record ImportedFileView(
    long Id, DateTimeOffset EnteredAt, string Person, string? Map, ImportWay Way, string Name, string Sha256, int Rows, int NewRows, int KnownRows,
    int RefusedRows, int Samples, string Refusals);

/// <param name="Files">The latest first.</param>
/// <param name="MoreFiles">There are earlier ones.</param>
public sealed record ImportView(IReadOnlyList<ImportMapView> Maps, IReadOnlyList<ImportedFileView> Files, bool MoreFiles);

/// <summary>What the page of imports shows: the maps, and the files that came in last.</summary>
public sealed class ImportPage(IDbContextFactory<RecordsContext> contexts)
{
    public const int PageSize = 50;

    public async Task<ImportView> Load(CancellationToken ct)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var maps = await (
            from map in db.ImportMaps
            join instrument in db.Instruments on map.InstrumentId equals instrument.Id
            orderby map.Name
            select new ImportMapView(map.Id, map.Version, map.Name, map.InstrumentId, instrument.Name, map.Definition, map.IsActive)).ToListAsync(ct);
        var files = await (
            from file in db.ImportedFiles
            join person in db.Users on file.PersonId equals person.Id
            join map in db.ImportMaps on file.ImportMapId equals map.Id into found
            from map in found.DefaultIfEmpty()
            orderby file.Id descending
            select new ImportedFileView(
                file.Id, file.EnteredAt, person.DisplayName, map == null ? null : map.Name, file.Way, file.Name, file.Sha256, file.Rows, file.NewRows,
                file.KnownRows, file.RefusedRows, file.Samples, file.Refusals)).Take(PageSize + 1).ToListAsync(ct);
        return new(maps.InNaturalOrder(map => map.Name), [.. files.Take(PageSize)], files.Count > PageSize);
    }
}
