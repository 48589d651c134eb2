using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Sites;

/// <summary>Says how much cold charge a furnace has room for, in every plan from now on. Plans that are kept stay as they are.</summary>
public sealed class SetFurnaceRoom(Recorder recorder, TimeProvider time) : Operation<SetFurnaceRoom.Command, long>(recorder, time)
{
    /// <param name="SeenM3">What the person saw there, so that nobody overwrites another without a word.</param>
    /// <param name="ColdChargeM3">The room, m³; null: no plan is held to it.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long FurnaceId, double? SeenM3, double? ColdChargeM3) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist, Role.Administrator];

    protected override void Check(Command command, FieldCheck fields)
    {
        if (command.ColdChargeM3 is { } room) fields.Positive("wishes.furnaceM3", room);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var furnace = await writing.Db.Furnaces.FindAsync([command.FurnaceId], cancellation);
        if (furnace is null) return Refuse("furnaceId", "furnace.unknown");
        if (furnace.ColdChargeM3 != command.SeenM3) return Stale();

        furnace.ColdChargeM3 = command.ColdChargeM3;
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(furnace.Id, new ChangeNotice(ChangeKind.Furnace, furnace.Id));
    }
}
