using System.Text.Json.Serialization;
using MeltShop.Metallurgy;
using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Identity;

namespace MeltShop.Operations.People;

/// <summary>Takes a person into the shop, with the roles that say what they may do.</summary>
public sealed class AddPerson(Recorder recorder, TimeProvider time) : Operation<AddPerson.Command, long>(recorder, time)
{
    /// <param name="IsStartPassword">Somebody else knows the password: see <see cref="StartPassword"/>.</param>
    public sealed record Command(
        Guid EntryKey,
        DateTimeOffset ObservedAt,
        string UserName,
        string DisplayName,
        IReadOnlyList<string> PersonRoles,
        string Culture = "en-GB",
        bool IsDemo = false,
        bool IsStartPassword = false) : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>Never written into the trail; only its hash is kept.</summary>
        [JsonIgnore]
        public string Password { get; init; } = "";

        /// <summary>For a message or a log: without the password.</summary>
        public override string ToString() => $"{nameof(AddPerson)} {UserName}";
    }

    public override IReadOnlyList<string> Roles { get; } = [Role.Administrator];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("userName", command.UserName, 100);
        fields.Text("displayName", command.DisplayName);
        fields.Text("password", command.Password);
        CheckRoles(command.PersonRoles, fields);
    }

    internal static void CheckRoles(IReadOnlyList<string> roles, FieldCheck fields)
    {
        if (roles.Count == 0) fields.Add("personRoles", "role.missing");
        foreach (var role in roles.Except(Role.All)) fields.Add("personRoles", "role.unknown", role);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        using var people = Accounts.In(writing.Db);
        if (await people.FindByNameAsync(command.UserName) is not null) return Refuse("userName", "code.taken", command.UserName);

        var person = new Person
        {
            UserName = command.UserName,
            DisplayName = command.DisplayName,
            Culture = command.Culture,
            IsDemo = command.IsDemo,
        };
        var made = await people.CreateAsync(person, command.Password);
        if (!made.Succeeded) return Written<long>.Refused([.. made.Errors.Select(Finding)]);

        if (command.IsStartPassword) StartPassword.Mark(writing.Db, person);
        await Accounts.GiveRoles(writing.Db, person, command.PersonRoles, cancellation);
        return Done(person.Id, new ChangeNotice(ChangeKind.Person, person.Id));
    }

    // Identity's codes read PasswordTooShort, InvalidUserName, …; with our rules these are all that can come.
    private static Finding Finding(IdentityError error) => error.Code.StartsWith("Password", StringComparison.Ordinal)
        ? Accounts.TooShort("password")
        : new Finding("userName", "userName.invalid");
}
