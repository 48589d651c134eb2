using MeltShop.Operations.Checking;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>
/// Says that the reaction had not ended when somebody pressed: the magnesium counts from the start of the tap until it is pressed
/// again. Answers the new version.
/// </summary>
public sealed class UndoReaction(Recorder recorder, TimeProvider time) : Operation<UndoReaction.Command, Guid>(recorder, time)
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
        if (treated is not { State: TreatedLadleState.Pouring, ReactionEndedAt: not null })
        {
            return Refuse("treatedLadleId", "state.wrong", treated.State.ToString());
        }

        if (await writing.Db.InForce<Tap>().AnyAsync(t => t.TreatedLadleId == treated.Id && t.FromTreatedLadleId != null, cancellation))
        {
            return Refuse("treatedLadleId", "correction.elsewhere"); // its reaction was in the ladle that it came from
        }

        writing.Step(treated, TreatedLadleState.Tapped, command.Reason);
        treated.ReactionEndedAt = null;
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(
            treated.Version,
            new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version),
            new ChangeNotice(ChangeKind.Heat, treated.HeatId));
    }
}
