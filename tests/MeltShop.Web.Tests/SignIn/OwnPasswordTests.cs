using System.Net;
using MeltShop.Operations.People;
using MeltShop.Records.People;
using MeltShop.Web.Composition;
using MeltShop.Web.Tests.Running;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.SignIn;

/// <summary>A password that somebody was given is asked to be changed, and is changed by its owner.</summary>
public sealed class OwnPasswordTests(WebApp app) : IClassFixture<WebApp>
{
    private const string Own = "one that only I know";

    [Fact]
    public async Task StartPassword_AtEachSignIn_LeadsToTheChoiceOfAnotherUntilItIsMade()
    {
        await app.Services.GetRequiredService<AddPerson>().Run(
            ProgramItself.Acting, new(Guid.NewGuid(), TimeProvider.System.GetUtcNow(), "dora", "Dora Somebody", [Role.Melter], IsStartPassword: true) { Password = WebApp.Password },
            TestContext.Current.CancellationToken);
        using var browser = new Browser(app);

        using var first = await browser.SignInAsync("dora", WebApp.Password, "/yard");
        Assert.Equal("/me?problem=startPassword", first.Headers.Location!.ToString());
        Assert.Contains("data-testid=\"problem\"", await browser.ReadAsync("/me?problem=startPassword"), StringComparison.Ordinal);
        using var wrong = await Change(browser, "not the password", Own);
        using var same = await Change(browser, WebApp.Password, WebApp.Password);
        using var changed = await Change(browser, WebApp.Password, Own);
        using var yard = await browser.OpenAsync("/yard");
        using var again = await browser.SignInAsync("dora", Own, "/yard");

        Assert.Contains("problem=own.password.wrong", wrong.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Contains("problem=own.password.same", same.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Contains("done=password", changed.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, yard.StatusCode);
        Assert.Equal("/yard", again.Headers.Location!.ToString());
    }

    private static Task<HttpResponseMessage> Change(Browser browser, string password, string newPassword) =>
        browser.PostAsync("/me", "/me/password", ("password", password), ("newPassword", newPassword));
}
