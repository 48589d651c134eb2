using System.Net;
using System.Text.Json;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api;

/// <summary>Every refusal of the contract, and those that its spirit asks for: one thing wrong in a body that is otherwise right.</summary>
public sealed class RefusalTests(WebApp app) : IClassFixture<WebApp>
{
    [Theory]
    [MemberData(nameof(Refusals.Charge), MemberType = typeof(Refusals))]
    [MemberData(nameof(Refusals.Correction), MemberType = typeof(Refusals))]
    [MemberData(nameof(Refusals.Treatment), MemberType = typeof(Refusals))]
    [MemberData(nameof(Refusals.Others), MemberType = typeof(Refusals))]
    public async Task Request_OneThingWrong_IsRefusedAtItsPath(string endpoint, string at, string? json, string path)
    {
        var client = await app.CreateMachineAsync();

        using var response = await client.SendJsonAsync(endpoint, Bodies.With(Bodies.Of(endpoint), at, json));

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        var problem = await response.ReadJsonAsync();
        Assert.Equal(400, problem.GetProperty("status").GetInt32());
        Assert.NotEmpty(problem.GetProperty("title").GetString()!);
        Assert.Equal([path], Paths(problem));
        Assert.All(problem.GetProperty("errors").GetProperty(path).EnumerateArray(), words => Assert.NotEmpty(words.GetString()!));
    }

    [Theory]
    [InlineData("charge")]
    [InlineData("correction")]
    [InlineData("treatment")]
    [InlineData("analysis")]
    [InlineData("burns")]
    public async Task Request_AsItIs_IsAnswered(string endpoint)
    {
        // Without this the theory above could pass for a wrong reason.
        await (await app.CreateMachineAsync()).AskAsync(endpoint, Bodies.Of(endpoint));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("\"C\"")]
    [InlineData("{\"analysis\": {\"C\": 3.6},}")]
    [InlineData("{\"analysis\": {\"\\ud800\": 3.6}}")]
    [InlineData("{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{}}}}}}}}}}}}}}}}}}")]
    public async Task Body_NoReadableObject_IsRefusedAtDollar(string body)
    {
        var client = await app.CreateMachineAsync();

        using var response = await client.SendJsonAsync("analysis", body);

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.Equal(["$"], Paths(await response.ReadJsonAsync()));
    }

    [Theory]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("-Infinity")]
    public async Task Body_WordThatIsNoJsonNumber_IsRefusedAtDollarAndAtItsField(string word)
    {
        var client = await app.CreateMachineAsync();

        using var response = await client.SendJsonAsync("charge", Bodies.With(Bodies.Charge, "materials[1].analysis.C", word));

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.Equal(["$", "materials[1].analysis.C"], Paths(await response.ReadJsonAsync()));
    }

    [Fact]
    public async Task Request_ManyThingsWrong_NamesAllOfThem()
    {
        var client = await app.CreateMachineAsync();

        using var response = await client.SendJsonAsync("charge", """
            {"meltKg": -1, "heel": {"kg": "much", "analysis": {"Fe": 93}}, "colour": 1,
             "materials": [{"code": "a", "analysis": {"Xx": 1, "C": -0.1}, "metallicYieldPercent": 0}, {"code": "a", "pricePerTonne": 1, "analysis": {}, "minKg": 5, "maxKg": 4}],
             "limits": [{"quantity": "CE"}], "confidencePercent": 100}
            """);

        Assert.Equal(
            ["colour", "confidencePercent", "heel.analysis.Fe", "heel.kg", "limits[0]", "limits[0].quantity", "materials[0].analysis.C",
             "materials[0].analysis.Xx", "materials[0].metallicYieldPercent", "materials[0].pricePerTonne", "materials[1].code", "materials[1].minKg", "meltKg"],
            Paths(await response.ReadJsonAsync()));
    }

    [Fact]
    public async Task Body_OverTheGreatestSize_IsRefusedWith413()
    {
        var client = await app.CreateMachineAsync();

        using var response = await client.SendJsonAsync("analysis", new string(' ', 2_000_000) + "{}");

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, response.StatusCode);
    }

    private static IEnumerable<string> Paths(JsonElement problem) =>
        problem.GetProperty("errors").EnumerateObject().Select(error => error.Name).Order(StringComparer.Ordinal);
}
