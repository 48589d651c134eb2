using MeltShop.Operations.People;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Records.Reading.People;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.People;

/// <summary>Rights and passwords of people, on both databases.</summary>
public sealed class SetPersonTests
{
    private const string Other = "another long password";

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Person_WithOtherRights_HasTheseAndAnotherStamp(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var before = await Person(shop, shop.Melter);
        var stamp = (await Row(shop, shop.Melter)).SecurityStamp;
        var command = Command(shop, before) with { DisplayName = "The melter, married", PersonRoles = [Role.Melter, Role.Supervisor] };

        await Shop.Do(shop.Get<SetPerson>(), shop.Administrator, command);

        var after = await Person(shop, shop.Melter);
        Assert.True(after.Standing.IsLike(new("The melter, married", true, [Role.Supervisor, Role.Melter])));
        Assert.NotEqual(stamp, (await Row(shop, shop.Melter)).SecurityStamp);
        await shop.Refuses(shop.Get<SetPerson>(), shop.Administrator, command with { EntryKey = Guid.NewGuid() }, "version", "version.stale");
        await Shop.Do(shop.Get<SetPerson>(), shop.Administrator, Command(shop, after) with { IsActive = false, PersonRoles = [Role.Supervisor] });
        Assert.True((await Person(shop, shop.Melter)).Standing.IsLike(new("The melter, married", false, [Role.Supervisor])));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Administrator_TheLastOne_StaysAdministrator(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var command = Command(shop, await Person(shop, shop.Administrator));

        await shop.Refuses(shop.Get<SetPerson>(), shop.Administrator, command with { PersonRoles = [Role.Melter] }, "personRoles", "administrator.last");
        await shop.Refuses(shop.Get<SetPerson>(), shop.Administrator, command with { IsActive = false }, "isActive", "administrator.last");

        Assert.Equal([Role.Administrator], (await Person(shop, shop.Administrator)).Standing.Roles);
    }

    [Fact]
    public async Task Person_WrongInput_IsRefusedAtItsField()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var command = Command(shop, await Person(shop, shop.Melter));

        await shop.Refuses(shop.Get<SetPerson>(), shop.Supervisor, command, "", "right.missing");
        await shop.Refuses(shop.Get<SetPerson>(), shop.Administrator, command with { DisplayName = " " }, "displayName", "text.missing");
        await shop.Refuses(shop.Get<SetPerson>(), shop.Administrator, command with { PersonRoles = [] }, "personRoles", "role.missing");
        await shop.Refuses(shop.Get<SetPerson>(), shop.Administrator, command with { PersonId = 4711 }, "personId", "person.unknown");
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Password_GivenAndThenChosen_IsAStartPasswordUntilThen(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await shop.Refuses(shop.Get<GivePassword>(), shop.Administrator, Given(shop, "short"), "password", "password.tooShort");
        await Shop.Do(shop.Get<GivePassword>(), shop.Administrator, Given(shop, Other));
        Assert.True((await Person(shop, shop.Melter)).HasStartPassword);
        Assert.Equal(PasswordVerificationResult.Success, await Verified(shop, Other));
        Assert.Equal(PasswordVerificationResult.Failed, await Verified(shop, Shop.Password));

        await shop.Refuses(shop.Get<ChangePassword>(), shop.Melter, Chosen(shop, Other, Other), "newPassword", "password.same");
        await shop.Refuses(shop.Get<ChangePassword>(), shop.Melter, Chosen(shop, Other, "short"), "newPassword", "password.tooShort");
        await shop.Refuses(shop.Get<ChangePassword>(), shop.Melter, Chosen(shop, Shop.Password, "their own long one"), "password", "password.wrong");
        await Shop.Do(shop.Get<ChangePassword>(), shop.Melter, Chosen(shop, Other, "their own long one"));

        Assert.False((await Person(shop, shop.Melter)).HasStartPassword);
        Assert.Equal(PasswordVerificationResult.Success, await Verified(shop, "their own long one"));
        await using var db = shop.Db();
        Assert.DoesNotContain(await db.TrailRows.Select(r => r.Payload).ToListAsync(Soon), payload => payload.Contains(Other) || payload.Contains("their own"));
    }

    private static GivePassword.Command Given(Shop shop, string password) => new(Guid.NewGuid(), shop.Now, shop.Melter.PersonId) { Password = password };

    private static ChangePassword.Command Chosen(Shop shop, string old, string password) => new(Guid.NewGuid(), shop.Now) { Password = old, NewPassword = password };

    private static SetPerson.Command Command(Shop shop, PersonAccount person) =>
        new(Guid.NewGuid(), shop.Now, person.Id, person.Standing, person.Standing.Name, person.Standing.Roles, true);

    private static async Task<PersonAccount> Person(Shop shop, Acting who) =>
        (await shop.Get<PeoplePage>().All(StartPassword.Claim, Soon)).People.Single(p => p.Id == who.PersonId);

    private static async Task<PasswordVerificationResult> Verified(Shop shop, string password)
    {
        var person = await Row(shop, shop.Melter);
        return new PasswordHasher<Person>().VerifyHashedPassword(person, person.PasswordHash!, password);
    }

    private static async Task<Person> Row(Shop shop, Acting who)
    {
        await using var db = shop.Db();
        return await db.Users.AsNoTracking().SingleAsync(p => p.Id == who.PersonId, Soon);
    }
}
