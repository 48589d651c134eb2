using System.Net;
using MeltShop.Web.Tests.Running;
using MeltShop.Web.Tests.SignIn;

namespace MeltShop.Web.Tests.Looks;

public sealed class LookTests(WebApp app) : IClassFixture<WebApp>
{
    [Theory]
    [InlineData("light", "not all")]
    [InlineData("dark", "not all")]
    [InlineData("contrast", "all")]
    public async Task Look_Chosen_IsInTheFirstByteOfEveryPageUntilTheDeviceDecidesAgain(string look, string contrast)
    {
        using var browser = new Browser(app);

        using var chosen = await browser.PostAsync("/look", "/look/choose", ("look", look), ("returnTo", "/sign-in"));
        var page = await browser.ReadAsync("/sign-in");
        using var given = await browser.PostAsync("/look", "/look/choose", ("look", "device"));
        var after = await browser.ReadAsync("/sign-in");

        Assert.Equal((HttpStatusCode.Redirect, "/sign-in"), (chosen.StatusCode, chosen.Headers.Location!.ToString()));
        Assert.Contains($"data-look=\"{look}\"", page, StringComparison.Ordinal);
        Assert.Contains($"media=\"{contrast}\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("data-look=", after, StringComparison.Ordinal);
        Assert.Contains("media=\"(prefers-contrast: more)\"", after, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("glitter")]
    [InlineData("\" onload=\"x")]
    public async Task Look_ThatWeDoNotHave_IsNotKept(string look)
    {
        using var browser = new Browser(app);

        using var chosen = await browser.PostAsync("/look", "/look/choose", ("look", look));

        Assert.DoesNotContain("data-look=", await browser.ReadAsync("/look"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Look_Choosing_SendsNobodyAway()
    {
        using var browser = new Browser(app);

        using var chosen = await browser.PostAsync("/look", "/look/choose", ("look", "dark"), ("returnTo", "//elsewhere.example/"));

        Assert.Equal("/", chosen.Headers.Location!.ToString());
    }
}
