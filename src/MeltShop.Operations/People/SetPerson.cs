using MeltShop.Operations.Checking;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Records.Reading.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.People;

/// <summary>
/// Says anew what somebody is called and may do, or that they have left: then they cannot sign in any more, and the records go on naming them.
/// With other rights they are signed out within a minute. Somebody stays who can do this.
/// </summary>
public sealed class SetPerson(Recorder recorder, TimeProvider time) : Operation<SetPerson.Command, long>(recorder, time)
{
    /// <param name="Seen">What stood there, so that nobody overwrites another without a word.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long PersonId, PersonStanding Seen, string DisplayName, IReadOnlyList<string> PersonRoles, bool IsActive)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Administrator];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("displayName", command.DisplayName);
        AddPerson.CheckRoles(command.PersonRoles, fields);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        // One after the other: two administrators could otherwise take each other's rights at once.
        await db.Roles.Where(r => r.Name == Role.Administrator).ExecuteUpdateAsync(r => r.SetProperty(x => x.Name, x => x.Name), cancellation);
        if (await db.Users.FindAsync([command.PersonId], cancellation) is not { } person) return Refuse("personId", "person.unknown", command.PersonId);
        using var people = Accounts.In(db);
        var held = await people.GetRolesAsync(person);
        if (!new PersonStanding(person.DisplayName, person.IsActive, [.. held]).IsLike(command.Seen)) return Stale();

        var isOther = person.IsActive != command.IsActive || !held.ToHashSet().SetEquals(command.PersonRoles);
        (person.DisplayName, person.IsActive) = (command.DisplayName, command.IsActive);
        var gone = held.Except(command.PersonRoles).ToList();
        if (gone.Count > 0) await people.RemoveFromRolesAsync(person, gone);
        await Accounts.GiveRoles(db, person, command.PersonRoles.Except(held), cancellation);
        if (!await HasAdministrator(db, cancellation)) return Refuse(command.IsActive ? "personRoles" : "isActive", "administrator.last");
        if (isOther) await people.UpdateSecurityStampAsync(person);
        return Done(person.Id, new ChangeNotice(ChangeKind.Person, person.Id));
    }

    private static Task<bool> HasAdministrator(RecordsContext db, CancellationToken cancellation) => (
        from person in db.Users
        join held in db.UserRoles on person.Id equals held.UserId
        join role in db.Roles on held.RoleId equals role.Id
        where role.Name == Role.Administrator && person.IsActive && person.PasswordHash != null
        select person.Id).AnyAsync(cancellation);
}
