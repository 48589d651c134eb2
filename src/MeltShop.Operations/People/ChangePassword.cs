using System.Text.Json.Serialization;
using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.People;

/// <summary>Somebody chooses another password of their own. Whoever is signed in with the old one elsewhere is out within a minute.</summary>
public sealed class ChangePassword(Recorder recorder, TimeProvider time, PasswordAgain password) : Operation<ChangePassword.Command, bool>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt) : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>The one that holds. Never written into the trail.</summary>
        [JsonIgnore]
        public string Password { get; init; } = "";

        /// <summary>Never written into the trail; only its hash is kept.</summary>
        [JsonIgnore]
        public string NewPassword { get; init; } = "";

        /// <summary>For a message or a log: without the secrets.</summary>
        public override string ToString() => nameof(ChangePassword);
    }

    public override IReadOnlyList<string> Roles { get; } = Role.All;

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("newPassword", command.NewPassword);
        if (command.NewPassword == command.Password) fields.Add("newPassword", "password.same");
    }

    protected override async Task<Written<bool>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        if (await writing.Db.Users.FindAsync([writing.Acting.PersonId], cancellation) is not { IsActive: true } person) return Refuse("", "right.missing", "");
        if (await password.Against(writing.Db, person.Id, command.Password, cancellation) is { } wrong) return Written<bool>.Refused(wrong);
        if (await Accounts.SetPassword(writing.Db, person, command.NewPassword, "newPassword") is { } unfit) return Written<bool>.Refused(unfit);
        await StartPassword.Unmark(writing.Db, person.Id, cancellation);
        return Done(true, new ChangeNotice(ChangeKind.Person, person.Id));
    }
}
