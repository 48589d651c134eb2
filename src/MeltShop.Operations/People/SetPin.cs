using System.Text.Json.Serialization;
using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Identity;

namespace MeltShop.Operations.People;

/// <summary>
/// Somebody chooses the digits with which they take over at a shared station. Only they themselves, and only with their password:
/// who has merely taken over at a station could otherwise take over for good.
/// </summary>
public sealed class SetPin(Recorder recorder, TimeProvider time, PasswordAgain password) : Operation<SetPin.Command, bool>(recorder, time)
{
    /// <summary>Fewer are guessed, more are written down.</summary>
    public const int Fewest = 4, Most = 8;

    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt) : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>Never written into the trail.</summary>
        [JsonIgnore]
        public string Password { get; init; } = "";

        /// <summary>Never written into the trail; only its hash is kept.</summary>
        [JsonIgnore]
        public string Pin { get; init; } = "";

        /// <summary>For a message or a log: without the secrets.</summary>
        public override string ToString() => nameof(SetPin);
    }

    public override IReadOnlyList<string> Roles { get; } = Role.All;

    protected override void Check(Command command, FieldCheck fields)
    {
        if (command.Pin.Length is < Fewest or > Most || !command.Pin.All(char.IsAsciiDigit) || command.Pin.Distinct().Count() == 1) fields.Add("pin", "pin.digits", Fewest, Most);
    }

    protected override async Task<Written<bool>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        if (await writing.Db.Users.FindAsync([writing.Acting.PersonId], cancellation) is not { IsActive: true } person) return Refuse("", "right.missing", "");
        if (await password.Against(writing.Db, person.Id, command.Password, cancellation) is { } wrong) return Written<bool>.Refused(wrong);
        person.PinHash = new PasswordHasher<Person>().HashPassword(person, command.Pin);
        return Done(true, new ChangeNotice(ChangeKind.Person, person.Id));
    }
}
