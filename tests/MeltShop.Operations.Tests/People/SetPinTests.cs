using MeltShop.Operations.People;
using MeltShop.Operations.Tests.Shops;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.People;

public sealed class SetPinTests(OneShop one) : IClassFixture<OneShop>
{
    private const string Password = "a long test password";
    private readonly Shop shop = one.Shop;

    [Fact]
    public async Task Pin_SetWithThePassword_IsKeptAsAHashAndIsNotInTheTrail()
    {
        Assert.True((await Shop.Do(shop.Get<SetPin>(), shop.Melter, Command(Password, "70351"))).Succeeded);

        await using var db = shop.Db();
        var person = await db.Users.SingleAsync(p => p.Id == shop.Melter.PersonId, TestContext.Current.CancellationToken);
        Assert.DoesNotContain("70351", person.PinHash);
        Assert.DoesNotContain(await db.TrailRows.Select(r => r.Payload).ToListAsync(TestContext.Current.CancellationToken), payload => payload.Contains("70351"));
    }

    [Theory]
    [InlineData(Password, "123", "pin", "pin.digits")]
    [InlineData(Password, "123456789", "pin", "pin.digits")]
    [InlineData(Password, "12a4", "pin", "pin.digits")]
    [InlineData(Password, "7777", "pin", "pin.digits")]
    [InlineData("somebody else's", "70351", "password", "password.wrong")]
    public async Task Pin_Unfit_IsRefusedAtItsField(string password, string pin, string path, string code) =>
        await shop.Refuses(shop.Get<SetPin>(), shop.Inspector, Command(password, pin), path, code);

    [Fact]
    public async Task Password_WrongTooOften_IsNotLookedAtForAWhileEvenWhereItIsRight()
    {
        for (var n = 0; n < PasswordAgain.MostWrong; n++)
            await shop.Refuses(shop.Get<SetPin>(), shop.Supervisor, Command($"guess {n}", "70351"), "password", "password.wrong");

        await shop.Refuses(shop.Get<SetPin>(), shop.Supervisor, Command(Password, "70351"), "password", "password.tooOften");
    }

    private SetPin.Command Command(string password, string pin) => new(Guid.NewGuid(), shop.Now) { Password = password, Pin = pin };
}
