using MeltShop.Operations.Checking;
using MeltShop.Records.Heats;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Heats;

/// <summary>Records iron that was poured out of the furnace into pig moulds while the heat goes on. Answers what is left by the ledger, kg.</summary>
public sealed class PigOut(Recorder recorder, TimeProvider time) : Operation<PigOut.Command, double>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long HeatId, double Kg, string? Reason)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Mass("kg", command.Kg);
        fields.OptionalText("reason", command.Reason, 500);
    }

    protected override async Task<Written<double>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var heat = await db.LockedHeat(command.HeatId, cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (!heat.IsInFurnace()) return Refuse("heatId", "state.wrong", heat.State.ToString());
        var inFurnace = await db.InFurnace(heat.FurnaceId, cancellation);
        if (command.Kg > await db.AtMost(heat, inFurnace, cancellation)) return Refuse("kg", "furnace.short", inFurnace);

        await writing.Book(heat, FurnaceMetalKind.Pigged, -command.Kg, cancellation, command.Reason);
        return Done(inFurnace - command.Kg, new ChangeNotice(ChangeKind.Heat, heat.Id), new ChangeNotice(ChangeKind.Furnace, heat.FurnaceId));
    }
}
