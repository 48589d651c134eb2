using MeltShop.Operations.Checking;
using MeltShop.Records.Importing;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Importing.Maps;

/// <summary>Keeps a column map under a name, anew or in place of the one before; files that came in stay as they were read. Answers the map.</summary>
public sealed class SaveImportMap(Recorder recorder, TimeProvider time) : Operation<SaveImportMap.Command, long>(recorder, time)
{
    /// <param name="MapId">The map that is replaced; null for a new one.</param>
    /// <param name="Version">As it was seen; null for a new one.</param>
    /// <param name="IsActive">False takes it out of use.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long? MapId, Guid? Version, string Name, ColumnMap Map, bool IsActive = true)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("name", command.Name, 60);
        ColumnMapCheck.Check(command.Map, fields);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var instrument = await db.Instruments.SingleOrDefaultAsync(i => i.Code == command.Map.Instrument && i.IsActive, cancellation);
        if (instrument is null) return Refuse("instrument", "instrument.unknown");
        var definition = RecordsJson.Text(command.Map);
        ImportMap? map;
        if (command.MapId is not { } id)
        {
            if (await db.ImportMaps.AnyAsync(m => m.Name == command.Name, cancellation)) return Refuse("name", "code.taken", command.Name);
            map = new() { Name = command.Name, InstrumentId = instrument.Id, Definition = definition, IsActive = command.IsActive };
            db.Add(map);
        }
        else
        {
            map = await db.ImportMaps.SingleOrDefaultAsync(m => m.Id == id && m.Name == command.Name, cancellation);
            if (map is null) return Refuse("map", "importMap.unknown");
            if (map.Version != command.Version) return Stale(writing, map, command.Version ?? Guid.Empty);
            if (map.InstrumentId != instrument.Id) return Refuse("instrument", "importMap.otherInstrument");
            db.Expect(map, command.Version.Value);
            (map.Definition, map.IsActive) = (definition, command.IsActive);
        }

        await db.SaveChangesAsync(cancellation);
        return Done(map.Id, new ChangeNotice(ChangeKind.Import, map.Id, map.Version));
    }
}
