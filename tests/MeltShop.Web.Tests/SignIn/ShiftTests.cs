using System.Net;
using System.Text.Json;
using MeltShop.Records.People;
using MeltShop.Web.Tests.Running;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;

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

        var end = await End(tablet);
        Assert.Equal(HttpStatusCode.OK, await Work(tablet, 11));
        Assert.Equal(end, await End(tablet));
        Assert.InRange(end - app.Clock.GetUtcNow(), TimeSpan.FromMinutes(50), TimeSpan.FromHours(1)); // the page says so a quarter of an hour before
        Assert.Equal(HttpStatusCode.Redirect, await Work(tablet, 2));
    }

    [Fact]
    public async Task OwnDevice_InUse_StaysSignedIn()
    {
        await app.AddPersonAsync("tomke", Role.Melter);
        using var desk = new Browser(app);
        using var entered = await desk.SignInAsync("tomke", WebApp.Password);

        Assert.Equal(HttpStatusCode.OK, await Work(desk, 24));
        Assert.InRange(await End(desk) - app.Clock.GetUtcNow(), TimeSpan.FromHours(11.9), TimeSpan.FromHours(12));
    }

    /// <summary>When a page of this browser says that its sign-in ends.</summary>
    private static async Task<DateTimeOffset> End(Browser browser)
    {
        using var ticket = JsonDocument.Parse(await browser.ReadAsync("/api/v1/entries/ticket"));
        return DateTimeOffset.FromUnixTimeMilliseconds(ticket.RootElement.GetProperty("until").GetInt64());
    }

    /// <summary>Opens a page every hour; answers what the last was answered.</summary>
    private async Task<HttpStatusCode> Work(Browser browser, int hours)
    {
        var last = HttpStatusCode.Unused;
        for (var hour = 0; hour < hours; hour++)
        {
            app.Clock.Step(TimeSpan.FromHours(1));
            using var page = await browser.OpenAsync("/me");
            last = page.StatusCode;
        }

        return last;
    }
}
