using System.Net;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Web.Tests.Running;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.SignIn;

public sealed class SignInTests(WebApp app) : IClassFixture<WebApp>
{
    [Fact]
    public async Task SignIn_RightPassword_OpensThePagesUntilSignOut()
    {
        await app.AddPersonAsync("anna", Role.Melter);
        using var browser = new Browser(app);

        using var before = await browser.OpenAsync("/yard");
        using var entered = await browser.SignInAsync("anna", WebApp.Password, "/yard");
        using var during = await browser.OpenAsync("/yard");
        using var left = await browser.PostAsync("/sign-in", "/sign-out");
        using var after = await browser.OpenAsync("/yard");

        Assert.Equal((HttpStatusCode.Redirect, "/sign-in"), (before.StatusCode, before.Headers.Location!.AbsolutePath));
        Assert.Equal((HttpStatusCode.Redirect, "/yard"), (entered.StatusCode, entered.Headers.Location!.ToString()));
        Assert.Equal(HttpStatusCode.OK, during.StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, left.StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, after.StatusCode);
    }

    [Theory]
    [InlineData("berta", "not the password")]
    [InlineData("nobody", WebApp.Password)]
    public async Task SignIn_WrongNameOrPassword_SaysTheSameAndKeepsTheName(string name, string password)
    {
        if (name == "berta") await app.AddPersonAsync("berta", Role.Melter);
        using var browser = new Browser(app);

        using var entered = await browser.SignInAsync(name, password);
        var page = await browser.ReadAsync(entered.Headers.Location!.ToString());

        Assert.StartsWith("/sign-in?problem=wrong&", entered.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Contains($"value=\"{name}\"", page, StringComparison.Ordinal);
        Assert.Contains("data-testid=\"problem\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain(password, page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task SignIn_FiveWrongPasswords_LocksTheNameEvenForTheRightOne()
    {
        await app.AddPersonAsync("carla", Role.Melter);
        using var browser = new Browser(app);

        for (var i = 0; i < 5; i++) (await browser.SignInAsync("carla", "wrong")).Dispose();
        using var right = await browser.SignInAsync("carla", WebApp.Password);

        Assert.StartsWith("/sign-in?problem=locked", right.Headers.Location!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task SignIn_Deactivated_StaysOut()
    {
        var id = await app.AddPersonAsync("dora", Role.Melter);
        await using var records = await app.Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(TestContext.Current.CancellationToken);
        (await records.Users.SingleAsync(person => person.Id == id, TestContext.Current.CancellationToken)).IsActive = false;
        await records.SaveChangesAsync(TestContext.Current.CancellationToken);
        using var browser = new Browser(app);

        using var entered = await browser.SignInAsync("dora", WebApp.Password);

        Assert.StartsWith("/sign-in?problem=", entered.Headers.Location!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_ForOthersThanWhoIsSignedIn_LeadsToTheSignInAndSaysWhy()
    {
        await app.AddPersonAsync("gesa", Role.Melter);
        using var browser = new Browser(app);
        using var entered = await browser.SignInAsync("gesa", WebApp.Password);

        using var refused = await browser.OpenAsync("/trail");

        Assert.EndsWith("&problem=right", refused.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Contains("not for the person who is signed in", await browser.ReadAsync("/sign-in?problem=right"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("//evil.example")]
    [InlineData("/\\evil.example")]
    [InlineData("https://evil.example/")]
    [InlineData("javascript:alert(1)")]
    [InlineData("")]
    public async Task SignIn_AddressElsewhere_LeadsToTheFirstPage(string returnTo)
    {
        var name = $"eva{Guid.NewGuid():N}";
        await app.AddPersonAsync(name, Role.Melter);
        using var browser = new Browser(app);

        using var entered = await browser.SignInAsync(name, WebApp.Password, returnTo);

        Assert.Equal("/", entered.Headers.Location!.ToString());
    }

    [Theory]
    [InlineData("/sign-in/enter", "/sign-in")]
    [InlineData("/first-administrator/add", "/first-administrator")]
    public async Task Post_WithoutTheAntiforgeryToken_DoesNothingAndLeadsToAFreshForm(string address, string page)
    {
        var name = $"frieda{page.Length}";
        await app.AddPersonAsync(name, Role.Melter);
        using var browser = new Browser(app);

        using var response = await browser.PostAsync(address, ("name", name), ("password", WebApp.Password));
        using var after = await browser.OpenAsync("/yard");

        Assert.Equal((HttpStatusCode.Redirect, $"{page}?problem=old"), (response.StatusCode, response.Headers.Location!.ToString()));
        Assert.Equal(HttpStatusCode.Redirect, after.StatusCode);
    }

    [Fact]
    public async Task SignOut_WithoutTheAntiforgeryToken_LeavesThePersonSignedIn()
    {
        await app.AddPersonAsync("hilde", Role.Melter);
        using var browser = new Browser(app);
        using var entered = await browser.SignInAsync("hilde", WebApp.Password);

        using var response = await browser.PostAsync("/sign-out");
        using var after = await browser.OpenAsync("/yard");

        Assert.Equal(HttpStatusCode.OK, after.StatusCode);
    }

    [Fact]
    public async Task Address_ThatDoesNotExist_ShowsAPageToWhoIsSignedIn()
    {
        await app.AddPersonAsync("ilse", Role.Melter);
        using var browser = new Browser(app);
        using var entered = await browser.SignInAsync("ilse", WebApp.Password);

        using var page = await browser.OpenAsync("/nowhere");
        using var call = await browser.OpenAsync("/api/v1/nowhere");

        Assert.Equal((HttpStatusCode.NotFound, "text/html"), (page.StatusCode, page.Content.Headers.ContentType?.MediaType));
        Assert.Equal((HttpStatusCode.NotFound, null), (call.StatusCode, call.Content.Headers.ContentType?.MediaType));
    }

    [Fact]
    public async Task SignInPage_InEarnest_NamesNoDemoPeople()
    {
        using var browser = new Browser(app);

        Assert.DoesNotContain("demo-people", await browser.ReadAsync("/sign-in"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Response_Any_ForbidsFramingAndForeignScripts()
    {
        using var browser = new Browser(app);

        using var response = await browser.OpenAsync("/sign-in");

        var policy = string.Join(' ', response.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Equal("DENY", Assert.Single(response.Headers.GetValues("X-Frame-Options")));
        Assert.Equal("nosniff", Assert.Single(response.Headers.GetValues("X-Content-Type-Options")));
    }

    [Fact]
    public async Task Scripts_OnTheStaticPages_AreNotInline()
    {
        using var browser = new Browser(app);

        var page = await browser.ReadAsync("/sign-in");

        Assert.DoesNotMatch("<script(?![^>]*src=)", page);
        Assert.DoesNotMatch(" on[a-z]+=", page);
    }
}
