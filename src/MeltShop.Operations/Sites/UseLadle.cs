using MeltShop.Operations.Checking;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Sites;

/// <summary>
/// Takes a ladle out of use, or into use again. Out of use nothing is prepared in it; what was treated in it still names it. Answers the
/// ladle's new version.
/// </summary>
public sealed class UseLadle(Recorder recorder, TimeProvider time) : Operation<UseLadle.Command, Guid>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long LadleId, Guid Version, bool IsActive) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Administrator, Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        // Nothing of it can be wrong before the records are asked.
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        await db.LockLadle(command.LadleId, cancellation); // nothing is prepared in it meanwhile
        var ladle = await db.Ladles.FindAsync([command.LadleId], cancellation);
        if (ladle is null) return Refuse("ladleId", "ladle.unknown");
        if (ladle.Version != command.Version) return Stale(writing, ladle, command.Version);
        var heat = await db.TreatedLadles
            .Where(l => l.LadleId == ladle.Id && (l.State == TreatedLadleState.Prepared || l.State == TreatedLadleState.Tapped || l.State == TreatedLadleState.Pouring))
            .Select(l => db.Heats.Single(h => h.Id == l.HeatId).Number).FirstOrDefaultAsync(cancellation);
        if (heat is not null && !command.IsActive) return Refuse("isActive", "ladle.inUse", heat);

        ladle.IsActive = command.IsActive;
        await db.SaveChangesAsync(cancellation);
        return Done(ladle.Version, new ChangeNotice(ChangeKind.Ladle, ladle.Id, ladle.Version));
    }
}
