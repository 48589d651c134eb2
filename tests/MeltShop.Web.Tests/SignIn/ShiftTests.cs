using System.Net;
using System.Security.Claims;
using MeltShop.Records.People;
using MeltShop.Web.SignIn;
using MeltShop.Web.Tests.Running;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;

namespace MeltShop.Web.Tests.SignIn;

/// <summary>How long a sign-in lasts while somebody works at the device, with the security stamp looked at again and again.</summary>
public sealed class ShiftTests(ShiftTests.SteppedApp app) : IClassFixture<ShiftTests.SteppedApp>
{
    /// <summary>An app whose clock a test sets forward.</summary>
    public sealed class SteppedApp : WebApp
    {
        internal SteppedClock Clock { get; } = new();

        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            base.ConfigureWebHost(builder);
            builder.ConfigureTestServices(services => services.AddSingleton<TimeProvider>(Clock));
        }
    }

    internal sealed class SteppedClock : TimeProvider
    {
        private TimeSpan ahead;

        public override DateTimeOffset GetUtcNow() => System.GetUtcNow() + ahead;

        public void Step(TimeSpan by) => ahead += by;
    }

    [Fact]
    public async Task SharedStation_InUse_AsksForThePasswordAfter12Hours()
    {
        await app.AddPersonAsync("sina", Role.Melter);
        using var tablet = new Browser(app);
        using var entered = await tablet.PostAsync("/sign-in", "/sign-in/enter", ("name", "sina"), ("password", WebApp.Password), ("station", "Floor tablet"), ("shared", "yes"));

        Assert.Equal(HttpStatusCode.OK, await Work(tablet, 11));
        Assert.Equal(HttpStatusCode.Redirect, await Work(tablet, 2));
    }

    [Fact]
    public async Task OwnDevice_InUse_StaysSignedIn()
    {
        await app.AddPersonAsync("tomke", Role.Melter);
        using var desk = new Browser(app);
        using var entered = await desk.SignInAsync("tomke", WebApp.Password);

        Assert.Equal(HttpStatusCode.OK, await Work(desk, 24));
    }

    /// <summary>A circuit of a page makes no request; an entry of the same browser, or another page, does.</summary>
    [Fact]
    public async Task Circuit_OfAnOwnDevice_EndsWithTheTermOfItsLatestRequest()
    {
        await app.AddPersonAsync("wibke", Role.Melter);
        using var desk = new Browser(app);
        using var entered = await desk.SignInAsync("wibke", WebApp.Password);
        await Work(desk, 1);
        var circuit = WhoIsIn(entered);
        app.Clock.Step(TimeSpan.FromHours(11));
        Assert.True(await HoldsAsync(circuit));

        Assert.Equal(HttpStatusCode.OK, await Work(desk, 0.5));
        app.Clock.Step(TimeSpan.FromHours(11));
        Assert.True(await HoldsAsync(circuit));
        app.Clock.Step(TimeSpan.FromHours(2));

        Assert.False(await HoldsAsync(circuit));
        Assert.Equal(HttpStatusCode.Redirect, await Work(desk, 0));
    }

    [Fact]
    public async Task Circuit_OfASharedStation_EndsWithItsShiftWhateverIsEntered()
    {
        await app.AddPersonAsync("frauke", Role.Melter);
        using var tablet = new Browser(app);
        using var entered = await tablet.PostAsync("/sign-in", "/sign-in/enter", ("name", "frauke"), ("password", WebApp.Password), ("station", "Floor tablet"), ("shared", "yes"));
        await Work(tablet, 11);
        Assert.True(await HoldsAsync(WhoIsIn(entered)));

        await Work(tablet, 2);

        Assert.False(await HoldsAsync(WhoIsIn(entered)));
    }

    /// <summary>As the circuit of a page learns it, from the cookie.</summary>
    private ClaimsPrincipal WhoIsIn(HttpResponseMessage entered)
    {
        var options = app.Services.GetRequiredService<IOptionsMonitor<CookieAuthenticationOptions>>().Get(IdentityConstants.ApplicationScheme);
        var cookie = SetCookieHeaderValue.ParseList([.. entered.Headers.GetValues("Set-Cookie")]).Single(one => one.Name == options.Cookie.Name);
        return options.TicketDataFormat.Unprotect(cookie.Value.ToString())!.Principal;
    }

    private async Task<bool> HoldsAsync(ClaimsPrincipal user)
    {
        await using var scope = app.Services.CreateAsyncScope();
        return await ((RevalidatingPerson)scope.ServiceProvider.GetRequiredService<AuthenticationStateProvider>()).HoldsAsync(user);
    }

    /// <summary>Opens a page every hour; answers what the last was answered.</summary>
    private async Task<HttpStatusCode> Work(Browser browser, double hours)
    {
        var last = HttpStatusCode.Unused;
        for (var left = hours; left > 0 || last is HttpStatusCode.Unused; left--)
        {
            app.Clock.Step(TimeSpan.FromHours(Math.Min(1, left)));
            using var page = await browser.OpenAsync("/me");
            last = page.StatusCode;
        }

        return last;
    }
}
