using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.People;

/// <summary>Shuts a machine out. Answers when the key ended.</summary>
public sealed class RevokeApiKey(Recorder recorder, TimeProvider time) : Operation<RevokeApiKey.Command, DateTimeOffset>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long ApiKeyId) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Administrator];

    protected override void Check(Command command, FieldCheck fields)
    {
        // Nothing of it can be wrong before the records are asked.
    }

    protected override async Task<Written<DateTimeOffset>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var key = await writing.Db.ApiKeys.FindAsync([command.ApiKeyId], cancellation);
        if (key is null) return Refuse("apiKeyId", "apiKey.unknown");

        key.RevokedAt ??= writing.Stamp.EnteredAt;
        return Done(key.RevokedAt.Value, new ChangeNotice(ChangeKind.ApiKey, key.Id));
    }
}
