using MeltShop.Operations.Checking;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Ladles;

/// <summary>
/// A prepared ladle will not be tapped. Its alloy has left the yard; what is saved of it is booked back by a count. Answers the new
/// version.
/// </summary>
public sealed class AbandonPocket(Recorder recorder, TimeProvider time) : Operation<AbandonPocket.Command, Guid>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long TreatedLadleId, Guid Version, string Reason)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields) => fields.Text("reason", command.Reason, 500);

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var treated = await writing.Db.TreatedLadles.FindAsync([command.TreatedLadleId], cancellation);
        if (treated is null) return Refuse("treatedLadleId", "ladle.unknown");
        if (treated.Version != command.Version) return Stale(writing, treated, command.Version);
        if (treated.State != TreatedLadleState.Prepared) return Refuse("treatedLadleId", "state.wrong", treated.State.ToString());

        writing.Step(treated, TreatedLadleState.Abandoned, command.Reason);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(
            treated.Version,
            new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version),
            new ChangeNotice(ChangeKind.Heat, treated.HeatId));
    }
}
