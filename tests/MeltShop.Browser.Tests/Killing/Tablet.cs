using System.Net;
using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Killing;

/// <summary>Hands entries in as the script of a page does: one after the other, each with a key of its own, again with the same key until it is answered.</summary>
internal sealed class Tablet(Uri address, string cookies, long heatId, long materialId) : IDisposable
{
    private readonly HttpClient client = new(new SocketsHttpHandler { UseCookies = false }) { BaseAddress = address, Timeout = TimeSpan.FromSeconds(300) };
    private JsonObject? waiting;
    private string? token;
    private long personId;
    private int made;

    /// <summary>Keys that the program has answered for, by operation.</summary>
    public List<(Guid Key, string Operation)> Acknowledged { get; } = [];

    public static async Task<string> CookiesAsync(IBrowserContext context) =>
        string.Join("; ", (await context.CookiesAsync()).Select(cookie => $"{cookie.Name}={cookie.Value}"));

    /// <summary>Enters until the program is gone.</summary>
    public async Task WorkAsync(CancellationToken cut)
    {
        while (!cut.IsCancellationRequested)
        {
            try
            {
                await EnterAsync();
            }
            catch (Exception e) when (e is HttpRequestException or OperationCanceledException or IOException)
            {
                return; // whether this one arrived is not known: it is sent again
            }
        }
    }

    /// <summary>One entry: the one that nobody has answered for, or the next.</summary>
    public async Task EnterAsync()
    {
        if (token is null) await FetchTicketAsync();
        waiting ??= Next();
        using var request = Request(HttpMethod.Post, "api/v1/entries");
        request.Headers.Add("RequestVerificationToken", token);
        request.Content = JsonContent.Create(waiting);
        using var answer = await client.SendAsync(request);
        Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{answer.StatusCode}: {await answer.Content.ReadAsStringAsync()}");
        var findings = (await answer.Content.ReadFromJsonAsync<JsonObject>())!["findings"]!.AsArray();
        Assert.True(findings.Count == 0, $"{waiting} was answered by {findings}");
        Acknowledged.Add((waiting["key"]!.GetValue<Guid>(), waiting["operation"]!.GetValue<string>()));
        waiting = null;
    }

    public void Dispose() => client.Dispose();

    private async Task FetchTicketAsync()
    {
        using var request = Request(HttpMethod.Get, "api/v1/entries/ticket");
        using var answer = await client.SendAsync(request);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var ticket = (await answer.Content.ReadFromJsonAsync<JsonObject>())!;
        (token, personId) = (ticket["token"]!.GetValue<string>(), ticket["personId"]!.GetValue<long>());
    }

    /// <summary>A weight, a temperature and a coin of two burns, in turn.</summary>
    private JsonObject Next()
    {
        var (operation, fields) = (made++ % 3) switch
        {
            0 => ("WeighIn", new JsonObject { ["materialId"] = $"{materialId}", ["kg"] = "1.25" }),
            1 => ("RecordTemperature", new JsonObject { ["temperatureC"] = $"{1400 + (made % 90)}" }),
            _ => ("RecordSample", new JsonObject { ["kind"] = "Bath", ["burns[0].C"] = "3.61", ["burns[0].Si"] = "1.42", ["burns[1].C"] = "3.63", ["burns[1].Si"] = "1.41" }),
        };
        return new()
        {
            ["key"] = Guid.NewGuid(),
            ["observedAt"] = TimeProvider.System.GetUtcNow(),
            ["personId"] = personId,
            ["operation"] = operation,
            ["about"] = new JsonObject { ["heatId"] = $"{heatId}", ["intoBath"] = "0" },
            ["fields"] = fields,
        };
    }

    private HttpRequestMessage Request(HttpMethod method, string path)
    {
        var request = new HttpRequestMessage(method, path);
        request.Headers.Add("Cookie", cookies);
        return request;
    }
}
