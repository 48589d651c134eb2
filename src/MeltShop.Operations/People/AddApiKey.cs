using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.People;

/// <summary>Lets a machine in by the hash of a key that its owner keeps.</summary>
public sealed class AddApiKey(Recorder recorder, TimeProvider time) : Operation<AddApiKey.Command, long>(recorder, time)
{
    /// <param name="Hash">See <see cref="ApiKeySecret.Hash"/>: the key itself never comes near the records.</param>
    /// <param name="ReadsRecords">Whether it may read all that was recorded.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, string Name, string Hash, bool ReadsRecords = false) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Administrator];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("name", command.Name);
        if (command.Hash is not { Length: 64 } hash || !hash.All(char.IsAsciiHexDigitLower)) fields.Add("hash", "hash.malformed");
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var key = new ApiKey { Name = command.Name, Hash = command.Hash, ReadsRecords = command.ReadsRecords, CreatedAt = writing.Stamp.EnteredAt };
        writing.Db.Add(key);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(key.Id, new ChangeNotice(ChangeKind.ApiKey, key.Id));
    }
}
