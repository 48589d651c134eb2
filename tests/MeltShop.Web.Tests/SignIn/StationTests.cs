using System.Net;
using System.Text.Json;
using System.Web;
using MeltShop.Operations;
using MeltShop.Operations.People;
using MeltShop.Records.People;
using MeltShop.Web.Tests.Running;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.SignIn;

public sealed class StationTests(WebApp app) : IClassFixture<WebApp>
{
    private const string Pin = "2749";

    [Fact]
    public async Task Pin_AtASharedStation_NamesTheOtherPersonAtTheSameStation()
    {
        await Hire("sina", Role.Melter);
        var other = await Hire("tomke", Role.Metallurgist);
        using var tablet = await Shared("sina");

        using var changed = await tablet.PostAsync("/station", "/station/person", ("name", "tomke"), ("pin", Pin), ("returnTo", "/yard?open=stock-form"));

        Assert.Equal("/yard", changed.Headers.Location!.ToString());
        Assert.Equal(other, await Named(tablet));
        Assert.Equal([Role.Metallurgist], await Roles(tablet)); // the rights are those of who is named, not of who signed the station in
    }

    [Fact]
    public async Task Pin_WhereNobodyIsSignedIn_SignsNobodyIn()
    {
        await Hire("uwe", Role.Melter);
        using var stranger = new Browser(app);

        using var changed = await stranger.PostAsync("/sign-in", "/station/person", ("name", "uwe"), ("pin", Pin), ("returnTo", "/yard?kind=PigIron"));
        using var after = await stranger.OpenAsync("/yard");

        Assert.Equal("/sign-in?returnTo=%2Fyard%3Fkind%3DPigIron", changed.Headers.Location!.ToString()); // and not to where a PIN is sent, which is no page
        Assert.Equal(HttpStatusCode.Redirect, after.StatusCode);
    }

    [Fact]
    public async Task Pin_AtADeviceOfOnePerson_ChangesNobody()
    {
        var own = await Hire("vera", Role.Melter);
        await Hire("wim", Role.Melter);
        using var desk = new Browser(app);
        using var entered = await desk.SignInAsync("vera", WebApp.Password);

        using var changed = await desk.PostAsync("/station", "/station/person", ("name", "wim"), ("pin", Pin));

        Assert.Contains("problem=personal", changed.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Equal(own, await Named(desk));
    }

    [Fact]
    public async Task Pin_GuessedFiveTimesUnderWhateverSpelling_IsNotTakenEvenIfRight_WhereARightOneIsNoGuess()
    {
        await Hire("xenia", Role.Melter);
        await Hire("yark", Role.Melter);
        using var tablet = await Shared("xenia");

        for (var i = 0; i < 2; i++) Assert.Null(await Problem("yark", Pin));
        foreach (var name in new[] { "yark", "YARK", "yar\u212A", "yar\u212A" }) Assert.Equal("wrong", await Problem(name, "1112")); // the sign of the kelvin is a K
        Assert.Null(await Problem("yark", Pin));
        Assert.Equal("wrong", await Problem("yark", "1112"));

        Assert.Equal("often", await Problem("yark", Pin));

        async Task<string?> Problem(string name, string pin)
        {
            using var changed = await tablet.PostAsync("/station", "/station/person", ("name", name), ("pin", pin));
            return HttpUtility.ParseQueryString(changed.Headers.Location!.ToString().Split('?').ElementAtOrDefault(1) ?? "")["problem"];
        }
    }

    [Fact]
    public async Task Pin_OfAnAdministrator_OpensNoAdministration()
    {
        await Hire("zora", Role.Melter);
        await Hire("alke", Role.Administrator, Role.Melter);
        using var tablet = await Shared("zora");
        using var changed = await tablet.PostAsync("/station", "/station/person", ("name", "alke"), ("pin", Pin));

        var roles = await Roles(tablet);

        Assert.Equal([Role.Melter], roles);
    }

    [Fact]
    public async Task StepDown_OfASharedStation_LeavesNobodyWhoMayDoAnything()
    {
        await Hire("boje", Role.Melter);
        using var tablet = await Shared("boje");

        using var down = await tablet.PostAsync("/station", "/station/step-down", ("returnTo", "/yard?kind=PigIron&open=stock-form&open=move-form.lot+7"));
        using var page = await tablet.OpenAsync("/yard");

        Assert.Equal("/yard?kind=PigIron", down.Headers.Location!.ToString());
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        Assert.Empty(await Roles(tablet));
        Assert.Equal(0, await Named(tablet)); // what waits for somebody is not sent meanwhile
        using var back = await tablet.PostAsync("/station", "/station/person", ("name", "boje"), ("pin", Pin));
        Assert.Equal([Role.Melter], await Roles(tablet));
    }

    [Fact]
    public async Task OwnPage_PinAndCulture_AreChosenByTheOneWhoIsSignedIn()
    {
        await app.AddPersonAsync("dirk", Role.Inspector);
        using var desk = new Browser(app);
        using var entered = await desk.SignInAsync("dirk", WebApp.Password);

        using var wrong = await desk.PostAsync("/me", "/me/pin", ("password", "not the password"), ("pin", Pin));
        using var same = await desk.PostAsync("/me", "/me/pin", ("password", WebApp.Password), ("pin", "4444"));
        using var right = await desk.PostAsync("/me", "/me/pin", ("password", WebApp.Password), ("pin", Pin));
        using var culture = await desk.PostAsync("/me", "/me/culture", ("culture", "de-DE"));
        using var unknown = await desk.PostAsync("/me", "/me/culture", ("culture", "tlh"));

        Assert.Contains("problem=password.wrong", wrong.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Contains("problem=pin.digits", same.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Contains("done=pin", right.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Contains("done=culture", culture.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Contains("problem=culture", unknown.Headers.Location!.ToString(), StringComparison.Ordinal);
        var page = await desk.ReadAsync("/me");
        Assert.Contains("value=\"de-DE\" selected", page, StringComparison.Ordinal);
        Assert.Contains("<html lang=\"en\" data-culture=\"de-DE\"", page, StringComparison.Ordinal); // what is not translated is English
        Assert.DoesNotContain("qps-p", page, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>A person of the shop with the PIN of these tests.</summary>
    private async Task<long> Hire(string name, params string[] roles)
    {
        var id = await app.AddPersonAsync(name, roles);
        var set = await app.Services.GetRequiredService<SetPin>().Run(
            new Acting(id, name, "test", roles), new(Guid.NewGuid(), TimeProvider.System.GetUtcNow()) { Password = WebApp.Password, Pin = Pin }, TestContext.Current.CancellationToken);
        Assert.True(set.Succeeded);
        return id;
    }

    private async Task<Browser> Shared(string name)
    {
        var tablet = new Browser(app);
        using var entered = await tablet.PostAsync("/sign-in", "/sign-in/enter", ("name", name), ("password", WebApp.Password), ("station", "Floor tablet"), ("shared", "yes"));
        return tablet;
    }

    private static async Task<long> Named(Browser browser)
    {
        using var ticket = JsonDocument.Parse(await browser.ReadAsync("/api/v1/entries/ticket"));
        return ticket.RootElement.GetProperty("personId").GetInt64();
    }

    private static async Task<string[]> Roles(Browser browser)
    {
        using var ticket = JsonDocument.Parse(await browser.ReadAsync("/api/v1/entries/ticket"));
        return [.. ticket.RootElement.GetProperty("roles").EnumerateArray().Select(role => role.GetString()!)];
    }
}
