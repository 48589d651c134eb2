using System.Text;
using System.Text.Json;

namespace MeltShop.Web.Tests.Running;

/// <summary>Sends literal JSON and reads the answer as JSON.</summary>
public static class JsonBody
{
    public static Task<HttpResponseMessage> SendJsonAsync(this HttpClient client, string endpoint, string json) =>
        client.PostAsync(
            new Uri($"/api/v1/calculations/{endpoint}", UriKind.Relative),
            new StringContent(json, Encoding.UTF8, "application/json"),
            TestContext.Current.CancellationToken);

    public static async Task<JsonElement> ReadJsonAsync(this HttpResponseMessage response)
    {
        using var document = JsonDocument.Parse(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        return document.RootElement.Clone();
    }

    /// <summary>The answer to a request that has to be answered with 200.</summary>
    public static async Task<JsonElement> AskAsync(this HttpClient client, string endpoint, string json)
    {
        using var response = await client.SendJsonAsync(endpoint, json);
        var text = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(response.IsSuccessStatusCode, $"{(int)response.StatusCode}: {text}");
        return JsonDocument.Parse(text).RootElement;
    }
}
