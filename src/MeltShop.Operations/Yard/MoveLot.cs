using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Yard;

/// <summary>Says in which bin a lot lies from now on. Where it lay before stays in the records. Answers the place.</summary>
public sealed class MoveLot(Recorder recorder, TimeProvider time) : Operation<MoveLot.Command, long>(recorder, time)
{
    /// <param name="Lot">As it stands on the bag; null for what lies there outside of every lot.</param>
    /// <param name="Bin">As the shop calls it; null where it lies in none any more.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long MaterialId, string? Lot, string? Bin) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.OptionalText("lot", command.Lot, 60);
        fields.OptionalText("bin", command.Bin, StockPlaces.LongestBin);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        if (!await writing.Db.Materials.AnyAsync(m => m.Id == command.MaterialId, cancellation)) return Refuse("materialId", "material.unknown");
        var lot = StockPlaces.Named(command.Lot);
        if (lot is not null && !await writing.Db.StockFacts.AnyAsync(s => s.MaterialId == command.MaterialId && s.Lot == lot, cancellation)) return Refuse("lot", "lot.unknown", lot);

        var place = writing.Stamp.Place(command.MaterialId, lot, StockPlaces.Named(command.Bin));
        writing.Db.Add(place);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(place.Id, new ChangeNotice(ChangeKind.Material, command.MaterialId));
    }
}
