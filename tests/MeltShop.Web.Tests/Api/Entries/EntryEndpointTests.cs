using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Web.Tests.Running;
using MeltShop.Web.Tests.SignIn;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Api.Entries;

public sealed class EntryEndpointTests(WebApp app) : IClassFixture<WebApp>
{
    [Fact]
    public async Task Draft_SentWithTheTicket_IsKept()
    {
        using var browser = await SignedIn("ina", Role.Melter);
        var ticket = await Ticket(browser);

        using var answer = await Send(browser, ticket, Draft(ticket, "heat/1/sample", "3.61"));

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("""{"findings":[]}""", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Equal("3.61", await Stored("heat/1/sample"));
    }

    [Fact]
    public async Task Entry_WithoutTheToken_IsRefused()
    {
        using var browser = await SignedIn("jette", Role.Melter);
        var ticket = await Ticket(browser);

        using var answer = await browser.Client.PostAsJsonAsync(new Uri("/api/v1/entries", UriKind.Relative), Draft(ticket, "heat/2/sample", "1"), TestContext.Current.CancellationToken);

        Assert.Equal(419, (int)answer.StatusCode);
        Assert.Null(await Stored("heat/2/sample"));
    }

    [Fact]
    public async Task Entry_OfSomebodyElse_WaitsForThem()
    {
        using var browser = await SignedIn("karl", Role.Melter);
        var ticket = await Ticket(browser);

        using var answer = await Send(browser, ticket, Draft(ticket with { PersonId = ticket.PersonId + 1 }, "heat/3/sample", "1"));

        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Null(await Stored("heat/3/sample"));
    }

    [Fact]
    public async Task Entry_WithATextThatIsNoNumber_IsAnsweredWithItsFieldAndWords()
    {
        using var browser = await SignedIn("lene", Role.Melter);
        var ticket = await Ticket(browser);

        using var answer = await Send(browser, ticket, Body(ticket, "RecordTemperature", new() { ["heatId"] = "1" }, new() { ["temperatureC"] = "hot" }));

        var finding = (await answer.ReadJsonAsync()).GetProperty("findings")[0];
        Assert.Equal(("temperatureC", "number.notANumber"), (finding.GetProperty("path").GetString(), finding.GetProperty("code").GetString()));
        Assert.NotEqual("number.notANumber", finding.GetProperty("words").GetString());
    }

    [Theory]
    [InlineData("ReadMinds", "heatId", "temperatureC")]
    [InlineData("RecordTemperature", "heat", "temperatureC")]
    [InlineData("RecordTemperature", "heatId", "colour")]
    public async Task Entry_OfAnotherProgram_Is400(string operation, string about, string field)
    {
        using var browser = await SignedIn($"mona-{operation}-{about}-{field}".ToLowerInvariant(), Role.Melter);
        var ticket = await Ticket(browser);

        using var answer = await Send(browser, ticket, Body(ticket, operation, new() { [about] = "1" }, new() { [field] = "1400" }));

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    private static object Draft(TicketText ticket, string subject, string text) =>
        Body(ticket, "KeepDraft", new() { ["subject"] = subject, ["field"] = "burns[0].C" }, new() { ["text"] = text });

    private static object Body(TicketText ticket, string operation, Dictionary<string, string> about, Dictionary<string, string> fields) =>
        new { key = Guid.NewGuid(), observedAt = TimeProvider.System.GetUtcNow(), personId = ticket.PersonId, operation, about, fields };

    private static async Task<TicketText> Ticket(Browser browser) =>
        JsonSerializer.Deserialize<TicketText>(await browser.ReadAsync("/api/v1/entries/ticket"), JsonSerializerOptions.Web)!;

    private static async Task<HttpResponseMessage> Send(Browser browser, TicketText ticket, object body)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri("/api/v1/entries", UriKind.Relative)) { Content = JsonContent.Create(body) };
        request.Headers.Add("RequestVerificationToken", ticket.Token);
        return await browser.Client.SendAsync(request, TestContext.Current.CancellationToken);
    }

    private async Task<Browser> SignedIn(string name, params string[] roles)
    {
        await app.AddPersonAsync(name, roles);
        var browser = new Browser(app);
        using var entered = await browser.SignInAsync(name, WebApp.Password);
        return browser;
    }

    private async Task<string?> Stored(string subject)
    {
        await using var records = await app.Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(TestContext.Current.CancellationToken);
        return await records.Drafts.Where(draft => draft.Subject == subject).Select(draft => draft.Text).SingleOrDefaultAsync(TestContext.Current.CancellationToken);
    }

    private sealed record TicketText(string Token, long PersonId, string Name, long Now);
}
