using System.Net;
using MeltShop.Web.Tests.Running;
using MeltShop.Web.Tests.SignIn;

namespace MeltShop.Web.Tests.Api.Events;

/// <summary>What was recorded, for other systems.</summary>
public sealed class EventTests(WebApp app) : IClassFixture<WebApp>
{
    [Fact]
    public async Task Events_PageByPage_ComeOnceEachInTheirOrderWithoutSecrets()
    {
        using var machine = await app.CreateMachineAsync(readsRecords: true);
        for (var n = 0; n < 5; n++) await app.AddPersonAsync($"p{Guid.NewGuid():N}", "melter");

        var (numbers, after, more) = (new List<long>(), 0L, true);
        while (more)
        {
            var page = await (await Get(machine, $"?after={after}&limit=2")).ReadJsonAsync();
            Assert.DoesNotContain(WebApp.Password, page.GetRawText(), StringComparison.Ordinal);
            numbers.AddRange(page.GetProperty("events").EnumerateArray().Select(e => e.GetProperty("number").GetInt64()));
            (after, more) = (page.GetProperty("next").GetInt64(), page.GetProperty("more").GetBoolean());
        }

        Assert.True(numbers.Count >= 6);
        Assert.Equal(Enumerable.Range(1, numbers.Count).Select(n => (long)n), numbers);
        var last = await (await Get(machine, $"?after={after}")).ReadJsonAsync();
        Assert.Equal((0, after), (last.GetProperty("events").GetArrayLength(), last.GetProperty("next").GetInt64()));
    }

    [Theory]
    [InlineData("?after=-1")]
    [InlineData("?after=x")]
    [InlineData("?limit=0")]
    [InlineData("?limit=501")]
    public async Task Events_QuestionWithoutSense_IsRefused(string query)
    {
        using var machine = await app.CreateMachineAsync(readsRecords: true);

        Assert.Equal(HttpStatusCode.BadRequest, (await Get(machine, query)).StatusCode);
    }

    [Fact]
    public async Task Events_WithoutAKey_AreRefused()
    {
        using var nobody = app.CreateClient();

        Assert.Equal(HttpStatusCode.Unauthorized, (await Get(nobody, "")).StatusCode);
    }

    [Fact]
    public async Task Events_AskedWithTheKeyOfAScale_AreRefused()
    {
        using var scale = await app.CreateMachineAsync();

        var answer = await Get(scale, "?after=0");

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Contains("api-key add NAME reader", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Events_AskedByAPersonWhoIsSignedIn_AreRefused()
    {
        var name = $"p{Guid.NewGuid():N}";
        await app.AddPersonAsync(name, "administrator");
        using var browser = new Browser(app);
        using var signedIn = await browser.SignInAsync(name, WebApp.Password);

        Assert.Equal(HttpStatusCode.Redirect, signedIn.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await Get(browser.Client, "?after=0")).StatusCode);
    }

    private static Task<HttpResponseMessage> Get(HttpClient client, string query) =>
        client.GetAsync(new Uri($"/api/v1/events{query}", UriKind.Relative), TestContext.Current.CancellationToken);
}
