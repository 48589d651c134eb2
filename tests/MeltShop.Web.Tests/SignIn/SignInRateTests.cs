using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.SignIn;

public sealed class SignInRateTests
{
    [Fact]
    public async Task SignIn_TooManyAttemptsFromOneAddress_AreToldToWait()
    {
        await using var app = new WebApp();
        using var browser = new Browser(app);

        // All at once: on a busy machine forty in turn would take longer than the minute for which they are counted.
        var entered = await Task.WhenAll(Enumerable.Range(0, 40).Select(i => browser.PostAsync("/sign-in/enter", ("name", $"somebody{i}"), ("password", "guess"))));

        Assert.Equal([("/sign-in?problem=busy", 10), ("/sign-in?problem=old", 30)], entered.CountBy(answer => answer.Headers.Location!.ToString()).Select(place => (place.Key, place.Value)).Order());
        foreach (var answer in entered) answer.Dispose();
    }
}
