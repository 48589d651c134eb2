using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.SignIn;

public sealed class SignInRateTests
{
    [Fact]
    public async Task SignIn_TooManyAttemptsFromOneAddress_AreToldToWait()
    {
        await using var app = new WebApp();
        using var browser = new Browser(app);
        var places = new List<string>();

        for (var i = 0; i < 40; i++)
        {
            using var entered = await browser.PostAsync("/sign-in/enter", ("name", $"somebody{i}"), ("password", "guess"));
            places.Add(entered.Headers.Location!.ToString());
        }

        Assert.Equal("/sign-in?problem=old", places[0]);
        Assert.Equal("/sign-in?problem=busy", places[^1]);
    }
}
