using System.Net;
using System.Text.Json;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api;

/// <summary>The document describes what the endpoints do: its examples are answered, and each field that it names is one that is read.</summary>
public sealed class OpenApiTests(WebApp app) : IClassFixture<WebApp>
{
    private static readonly string[] Endpoints = ["charge", "correction", "treatment", "analysis", "burns"];

    [Fact]
    public async Task Document_WithoutAKey_DescribesTheFiveCalculations()
    {
        var document = await ReadAsync();

        Assert.StartsWith("3.", document.GetProperty("openapi").GetString(), StringComparison.Ordinal);
        Assert.Equal(
            Endpoints.Select(name => $"/api/v1/calculations/{name}").Order(StringComparer.Ordinal),
            document.GetProperty("paths").EnumerateObject().Select(path => path.Name).Order(StringComparer.Ordinal));
        Assert.All(Endpoints, name => Assert.Superset(
            new HashSet<string> { "200", "400", "401" },
            Operation(document, name).GetProperty("responses").EnumerateObject().Select(r => r.Name).ToHashSet()));
    }

    [Fact]
    public async Task Document_Request_OffersWhatIsReadAndNoMore()
    {
        var schema = Body(await ReadAsync(), "charge").GetProperty("schema");

        Assert.Equal("number", schema.GetProperty("properties").GetProperty("meltKg").GetProperty("type").GetString());
        Assert.False(schema.GetProperty("additionalProperties").GetBoolean());
        Assert.False(schema.GetProperty("properties").GetProperty("materials").GetProperty("items").GetProperty("additionalProperties").GetBoolean());
    }

    [Fact]
    public async Task Document_EveryReference_Resolves()
    {
        var document = await ReadAsync();
        var text = document.GetRawText();

        var references = System.Text.RegularExpressions.Regex.Matches(text, "\"#/components/([^/\"]+)/([^/\"]+)\"");

        Assert.NotEmpty(references);
        Assert.All(references, reference =>
            Assert.True(document.GetProperty("components").GetProperty(reference.Groups[1].Value).TryGetProperty(reference.Groups[2].Value, out _), reference.Value));
    }

    [Fact]
    public async Task Document_EachExample_IsAnswered()
    {
        var document = await ReadAsync();
        using var client = await app.CreateMachineAsync();

        foreach (var name in Endpoints)
        {
            var answer = await client.AskAsync(name, Body(document, name).GetProperty("example").GetRawText());
            if (answer.TryGetProperty("status", out var status)) Assert.Equal("optimal", status.GetString());
        }
    }

    [Theory]
    [InlineData("charge")]
    [InlineData("correction")]
    [InlineData("treatment")]
    [InlineData("analysis")]
    [InlineData("burns")]
    public async Task Document_EachFieldItNames_IsRead(string endpoint)
    {
        var document = await ReadAsync();
        var schema = Resolve(document, Body(document, endpoint).GetProperty("schema"));
        using var client = await app.CreateMachineAsync();

        foreach (var path in Fields(document, schema, ""))
        {
            // A value of a kind that no field has: one that is read is refused for its kind, one that is not for its name.
            using var response = await client.SendJsonAsync(endpoint, Bodies.With(Bodies.With(Bodies.Of(endpoint), "extra", "0"), path, "true"));
            var errors = (await response.ReadJsonAsync()).GetProperty("errors");
            var unknown = errors.GetProperty("extra")[0].GetString();
            Assert.True(errors.TryGetProperty(path, out var at), $"{path} is described and not read.");
            Assert.DoesNotContain(unknown, at.EnumerateArray().Select(words => words.GetString()));
        }
    }

    private static IEnumerable<string> Fields(JsonElement document, JsonElement schema, string path)
    {
        if (!schema.TryGetProperty("properties", out var properties)) yield break;
        foreach (var property in properties.EnumerateObject())
        {
            var at = path.Length == 0 ? property.Name : $"{path}.{property.Name}";
            yield return at;
            var inner = Resolve(document, property.Value);
            if (inner.TryGetProperty("items", out var items)) (inner, at) = (Resolve(document, items), at + "[0]");
            foreach (var field in Fields(document, inner, at)) yield return field;
        }
    }

    private static JsonElement Resolve(JsonElement document, JsonElement schema)
    {
        if (schema.TryGetProperty("oneOf", out var choices)) schema = choices.EnumerateArray().First(choice => choice.TryGetProperty("$ref", out _));
        return schema.TryGetProperty("$ref", out var reference)
            ? document.GetProperty("components").GetProperty("schemas").GetProperty(reference.GetString()!.Split('/')[^1])
            : schema;
    }

    private static JsonElement Operation(JsonElement document, string name) =>
        document.GetProperty("paths").GetProperty($"/api/v1/calculations/{name}").GetProperty("post");

    private static JsonElement Body(JsonElement document, string name) =>
        Operation(document, name).GetProperty("requestBody").GetProperty("content").GetProperty("application/json");

    private async Task<JsonElement> ReadAsync()
    {
        using var client = app.CreateClient();
        using var response = await client.GetAsync(new Uri("/openapi/v1.json", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return await response.ReadJsonAsync();
    }
}
