using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>
/// Calls a heat off before anything was tapped. It keeps its number. What had been charged or poured back stays in the furnace as the heel, with an
/// analysis only where the bath was sampled. Answers the new version.
/// </summary>
public sealed class CancelHeat(Recorder recorder, TimeProvider time) : Operation<CancelHeat.Command, Guid>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long HeatId, Guid Version, string Reason)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields) => fields.Text("reason", command.Reason, 500);

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var heat = await db.LockedHeat(command.HeatId, cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (heat.Version != command.Version) return Stale(writing, heat, command.Version);
        if (heat.State is not (HeatState.Charging or HeatState.Bath)) return Refuse("heatId", "state.wrong", heat.State.ToString());
        var prepared = await db.TreatedLadles
            .FirstOrDefaultAsync(l => l.HeatId == heat.Id && l.State == TreatedLadleState.Prepared, cancellation);
        if (prepared is not null) return Refuse("heatId", "ladle.unpoured", prepared.Ordinal, prepared.State.ToString());

        if (await db.Handled(heat, cancellation) > heat.HeelKg)
        {
            var bath = await BathNow.Load(db, heat, cancellation);
            var kg = await db.InFurnace(heat.FurnaceId, cancellation);
            db.Add(writing.Stamp.Heel(heat, kg, bath?.Metal.Analysis ?? Analysis.Empty, bath?.SampleId, command.Reason));
        }

        writing.Step(heat, HeatState.Cancelled, command.Reason);
        heat.ClosedAt = writing.Stamp.ObservedAt;
        await db.SaveChangesAsync(cancellation);
        return Done(
            heat.Version,
            new ChangeNotice(ChangeKind.Heat, heat.Id, heat.Version),
            new ChangeNotice(ChangeKind.Furnace, heat.FurnaceId));
    }
}
