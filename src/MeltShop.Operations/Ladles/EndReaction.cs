using MeltShop.Operations.Checking;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>The reaction in the ladle has ended, at the observed time: the clock of the magnesium starts. Answers the new version.</summary>
public sealed class EndReaction(Recorder recorder, TimeProvider time) : Operation<EndReaction.Command, Guid>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long TreatedLadleId, Guid Version)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        // Nothing of it can be wrong before the records are asked.
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var treated = await writing.Db.TreatedLadles.FindAsync([command.TreatedLadleId], cancellation);
        if (treated is null) return Refuse("treatedLadleId", "ladle.unknown");
        if (treated.Version != command.Version) return Stale(writing, treated, command.Version);
        if (treated.State != TreatedLadleState.Tapped) return Refuse("treatedLadleId", "state.wrong", treated.State.ToString());
        var tappedAt = await writing.Db.InForce<Tap>().Where(t => t.TreatedLadleId == treated.Id).MaxAsync(t => t.ObservedAt, cancellation);
        if (writing.Stamp.ObservedAt < tappedAt) return Refuse("observedAt", "time.beforeTap", tappedAt);
        var poured = await writing.Db.InForce<PouredMould>().Where(m => m.TreatedLadleId == treated.Id && !m.IsWithdrawn)
            .MinAsync(m => (DateTimeOffset?)m.FirstAt, cancellation);
        if (writing.Stamp.ObservedAt > poured) return Refuse("observedAt", "reaction.afterMould", poured.Value); // or a late press would make old iron young

        writing.Step(treated, TreatedLadleState.Pouring);
        treated.ReactionEndedAt = writing.Stamp.ObservedAt;
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(
            treated.Version,
            new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version),
            new ChangeNotice(ChangeKind.Heat, treated.HeatId));
    }
}
