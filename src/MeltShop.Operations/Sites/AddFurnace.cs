using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Sites;

/// <summary>Takes a furnace into the shop.</summary>
public sealed class AddFurnace(Recorder recorder, TimeProvider time) : Operation<AddFurnace.Command, long>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, string Code, string Name, double CapacityKg, double PowerKw, double? HighestC = null)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Administrator];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("code", command.Code, 60);
        Check(fields, command.Name, command.CapacityKg, command.PowerKw, command.HighestC);
    }

    internal static void Check(FieldCheck fields, string name, double capacityKg, double powerKw, double? highestC)
    {
        fields.Text("name", name);
        fields.Mass("capacityKg", capacityKg);
        fields.Positive("powerKw", powerKw);
        if (highestC is { } highest) fields.Temperature("highestC", highest);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        if (await writing.Db.Furnaces.AnyAsync(f => f.Code == command.Code, cancellation)) return Refuse("code", "code.taken", command.Code);

        var furnace = new Furnace
        {
            Code = command.Code, Name = command.Name, CapacityKg = command.CapacityKg, PowerKw = command.PowerKw, HighestC = command.HighestC,
        };
        writing.Db.Add(furnace);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(furnace.Id, new ChangeNotice(ChangeKind.Furnace, furnace.Id));
    }
}
