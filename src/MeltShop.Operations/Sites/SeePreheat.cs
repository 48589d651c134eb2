using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Sites;

/// <summary>Says how warm a ladle is, and whether it has a lid, as somebody saw it. Answers the new version.</summary>
public sealed class SeePreheat(Recorder recorder, TimeProvider time) : Operation<SeePreheat.Command, Guid>(recorder, time)
{
    /// <param name="HasLid">Null leaves it as it is.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long LadleId, LadlePreheat Preheat, bool? HasLid)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor, Role.Administrator];

    protected override void Check(Command command, FieldCheck fields) => fields.Choice("preheat", command.Preheat);

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var ladle = await writing.Db.Ladles.FindAsync([command.LadleId], cancellation);
        if (ladle is null) return Refuse("ladleId", "ladle.unknown");
        ladle.Preheat = command.Preheat;
        ladle.PreheatSeenAt = writing.Stamp.ObservedAt;
        ladle.HasLid = command.HasLid ?? ladle.HasLid;
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(ladle.Version, new ChangeNotice(ChangeKind.Ladle, ladle.Id, ladle.Version));
    }
}
