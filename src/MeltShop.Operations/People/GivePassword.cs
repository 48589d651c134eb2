using System.Text.Json.Serialization;
using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.People;

/// <summary>
/// Gives somebody who forgot theirs, or never had one, a start password. Whoever is signed in with the old one is out within a minute; a lock
/// for too many wrong ones ends.
/// </summary>
public sealed class GivePassword(Recorder recorder, TimeProvider time) : Operation<GivePassword.Command, long>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long PersonId) : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>Never written into the trail; only its hash is kept.</summary>
        [JsonIgnore]
        public string Password { get; init; } = "";

        /// <summary>For a message or a log: without the password.</summary>
        public override string ToString() => $"{nameof(GivePassword)} {PersonId}";
    }

    public override IReadOnlyList<string> Roles { get; } = [Role.Administrator];

    protected override void Check(Command command, FieldCheck fields) => fields.Text("password", command.Password);

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        if (await writing.Db.Users.FindAsync([command.PersonId], cancellation) is not { } person) return Refuse("personId", "person.unknown", command.PersonId);
        if (await Accounts.SetPassword(writing.Db, person, command.Password, "password") is { } wrong) return Written<long>.Refused(wrong);
        (person.LockoutEnd, person.AccessFailedCount) = (null, 0);
        await StartPassword.Unmark(writing.Db, person.Id, cancellation);
        StartPassword.Mark(writing.Db, person);
        return Done(person.Id, new ChangeNotice(ChangeKind.Person, person.Id));
    }
}
