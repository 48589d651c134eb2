using MeltShop.Web.SignIn;
using MeltShop.Web.Tests.Running;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.SignIn;

public sealed class FirstAdministratorTests
{
    [Fact]
    public async Task FirstAdministrator_RightCode_IsMadeOnceAndMaySignIn()
    {
        await using var app = new WebApp { IsFirstStart = true };
        using var browser = new Browser(app);
        var code = app.Services.GetRequiredService<FirstAdministrator>().Code!;

        using var added = await AddAsync(browser, code, "greta", WebApp.Password);
        using var again = await AddAsync(browser, code, "mallory", WebApp.Password);
        using var entered = await browser.SignInAsync("greta", WebApp.Password);

        Assert.Equal("/sign-in?name=greta", added.Headers.Location!.ToString());
        Assert.Equal("/first-administrator?problem=old", again.Headers.Location!.ToString()); // the form is gone, and its token with it
        Assert.Equal("/", entered.Headers.Location!.ToString());
        Assert.Contains("data-testid=\"closed\"", await browser.ReadAsync("/first-administrator"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task FirstAdministrator_WrongCode_IsNotMade()
    {
        await using var app = new WebApp();
        using var browser = new Browser(app);

        using var refused = await AddAsync(browser, "ABCDEFGHJKLM", "mallory", WebApp.Password);
        using var entered = await browser.SignInAsync("mallory", WebApp.Password);

        Assert.StartsWith("/first-administrator?problem=code&name=mallory", refused.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("/sign-in?problem=wrong", entered.Headers.Location!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task FirstAdministrator_PasswordTooShort_KeepsTheCodeForAnotherTry()
    {
        await using var app = new WebApp();
        using var browser = new Browser(app);
        var code = app.Services.GetRequiredService<FirstAdministrator>().Code!;

        using var refused = await AddAsync(browser, code, "greta", "short");
        using var added = await AddAsync(browser, code, "greta", WebApp.Password);

        Assert.StartsWith("/first-administrator?problem=password", refused.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Equal("/sign-in?name=greta", added.Headers.Location!.ToString());
    }

    private static Task<HttpResponseMessage> AddAsync(Browser browser, string code, string name, string password) => browser.PostAsync(
        "/first-administrator", "/first-administrator/add", ("code", code), ("displayName", "Greta Somebody"), ("name", name), ("password", password));
}
