using MeltShop.Operations.People;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records.People;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.People;

public sealed class AddPersonTests(OneShop one) : IClassFixture<OneShop>
{
    private const string Password = "a pass phrase of three words";
    private readonly Shop shop = one.Shop;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Fact]
    public async Task AddPerson_WithRoles_CanBeSignedInAndThePasswordIsNowhere()
    {
        var added = await Shop.Do(shop.Get<AddPerson>(), shop.Administrator, Person("greta"));

        await using var db = shop.Db();
        var person = await db.Users.SingleAsync(p => p.Id == added.Value, Soon);
        var roles = await db.UserRoles.Where(r => r.UserId == person.Id).Join(db.Roles, r => r.RoleId, r => r.Id, (_, r) => r.Name).ToListAsync(Soon);
        Assert.Equal([Role.Inspector, Role.Metallurgist], roles.Order());
        Assert.Equal("GRETA", person.NormalizedUserName);
        Assert.NotNull(person.SecurityStamp);
        Assert.DoesNotContain(Password, person.PasswordHash);
        Assert.DoesNotContain(await db.TrailRows.Select(r => r.Payload).ToListAsync(Soon), payload => payload.Contains(Password));
    }

    [Fact]
    public async Task AddPerson_WrongInput_IsRefusedAtItsField()
    {
        var operation = shop.Get<AddPerson>();
        await shop.Refuses(operation, shop.Melter, Person("x1"), "", "right.missing");
        await shop.Refuses(operation, shop.Administrator, Person("the-melter"), "userName", "code.taken");
        await shop.Refuses(operation, shop.Administrator, Person("with blank"), "userName", "userName.invalid");
        await shop.Refuses(operation, shop.Administrator, Person("x2") with { Password = "short" }, "password", "password.tooShort");
        await shop.Refuses(operation, shop.Administrator, Person("x3") with { PersonRoles = [] }, "personRoles", "role.missing");
        await shop.Refuses(operation, shop.Administrator, Person("x4") with { PersonRoles = ["king"] }, "personRoles", "role.unknown");
    }

    [Fact]
    public async Task AddApiKey_ThenRevoke_KeepsTheHashOnly()
    {
        var secret = ApiKeySecret.Make();
        var id = await Shop.Do(shop.Get<AddApiKey>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, "spectrometer", secret.Hash));

        await shop.Refuses(shop.Get<AddApiKey>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, "spectrometer", secret.Text), "hash", "hash.malformed");
        var revoked = await Shop.Do(shop.Get<RevokeApiKey>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, id.Value));

        await using var db = shop.Db();
        var key = await db.ApiKeys.SingleAsync(Soon);
        Assert.Equal((secret.Hash, revoked.Value), (key.Hash, key.RevokedAt));
        Assert.DoesNotContain(await db.TrailRows.Select(r => r.Payload).ToListAsync(Soon), payload => payload.Contains(secret.Text));
    }

    private AddPerson.Command Person(string userName) =>
        new(Guid.NewGuid(), shop.Now, userName, "Greta", [Role.Inspector, Role.Metallurgist]) { Password = Password };
}
