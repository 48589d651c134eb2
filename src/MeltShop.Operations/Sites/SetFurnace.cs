using MeltShop.Operations.Checking;
using MeltShop.Records.Heats;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Sites;

/// <summary>
/// Says the name and the figures of a furnace anew, after a new lining for example, or takes it out of use. Plans that are kept stay as they
/// are. Answers the new version.
/// </summary>
public sealed class SetFurnace(Recorder recorder, TimeProvider time) : Operation<SetFurnace.Command, Guid>(recorder, time)
{
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long FurnaceId, Guid Version, string Name, double CapacityKg, double PowerKw, double? HighestC, bool IsActive)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Administrator];

    protected override void Check(Command command, FieldCheck fields) =>
        AddFurnace.Check(fields, command.Name, command.CapacityKg, command.PowerKw, command.HighestC);

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        await writing.Db.LockFurnace(command.FurnaceId, cancellation); // no heat is started meanwhile
        var furnace = await writing.Db.Furnaces.FindAsync([command.FurnaceId], cancellation);
        if (furnace is null) return Refuse("furnaceId", "furnace.unknown");
        if (furnace.Version != command.Version) return Stale(writing, furnace, command.Version);
        var heat = await writing.Db.Heats
            .Where(h => h.FurnaceId == furnace.Id && (h.State == HeatState.Charging || h.State == HeatState.Bath || h.State == HeatState.Tapping))
            .Select(h => h.Number).FirstOrDefaultAsync(cancellation);
        if (heat is not null && !command.IsActive) return Refuse("isActive", "furnace.busy", heat);

        (furnace.Name, furnace.CapacityKg, furnace.PowerKw) = (command.Name, command.CapacityKg, command.PowerKw);
        (furnace.HighestC, furnace.IsActive) = (command.HighestC, command.IsActive);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(furnace.Version, new ChangeNotice(ChangeKind.Furnace, furnace.Id));
    }
}
