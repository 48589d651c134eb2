using System.Net;
using System.Net.Http.Json;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api.Weighings;

/// <summary>What a scale under a ladle sends, and what it is answered.</summary>
public sealed class TapEndpointTests(ScaleShop app) : IClassFixture<ScaleShop>
{
    [Fact]
    public async Task Tap_FromAScale_IsRecordedNetWithItsGrossAndTareAndOnceHoweverOftenItIsSent()
    {
        await app.Prepare("scale-1");
        using var scale = await app.CreateMachineAsync();
        var answers = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Send(scale, Tap("tap-1", "scale-1"))));

        Assert.All(answers, answer => Assert.Equal(HttpStatusCode.OK, answer.StatusCode));
        var tap = Assert.Single(await app.Taps());
        Assert.Equal((812.5, 1412.5, 600.0), (tap.Kg, tap.GrossKg!.Value, tap.TareKg!.Value));
        using var other = await Send(scale, Tap("tap-1", "scale-1", gross: 1500));
        await Refused(other, "id", "each needs its own id");
        using var second = await Send(scale, Tap("tap-2", "scale-1"));
        await Refused(second, "ladle", "tapped already");
        foreach (var answer in answers) answer.Dispose();
    }

    public static TheoryData<string, object?, string, string> Wrong => new()
    {
        { "stable", false, "stable", "does not stand still" },
        { "stable", null, "stable", "" },
        { "tareKg", 1412.5, "tareKg", "nothing is left" },
        { "heat", "T-1999-0001", "heat", "There is no heat" },
        { "ladle", "no-such", "ladle", "There is no ladle no-such" },
        { "by", "ivo", "by", "may not tap" },
        { "grossKg", 90_000, "grossKg", "More than the furnace holds" },
        { "temperatureC", 20, "temperatureC", "" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public async Task Tap_Wrong_IsToldAtItsFieldAndNotRecorded(string field, object? value, string path, string words)
    {
        var code = "wrong-" + Guid.NewGuid().ToString("N")[..6];
        await app.Prepare(code);
        using var scale = await app.CreateMachineAsync();
        var before = (await app.Taps()).Count;
        var body = Tap("wrong-" + Guid.NewGuid(), code);
        body[field] = value;
        using var answer = await Send(scale, body);

        await Refused(answer, path, words);
        Assert.Equal(before, (await app.Taps()).Count);
    }

    [Fact]
    public async Task Tap_WithoutAKey_IsRefused()
    {
        using var stranger = app.CreateClient();
        using var answer = await Send(stranger, Tap("stranger", "scale-1"));

        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
    }

    private Dictionary<string, object?> Tap(string id, string ladle, double gross = 1412.5) => new()
    {
        ["id"] = id, ["heat"] = app.HeatNumber, ["ladle"] = ladle, ["by"] = "Tilda", ["grossKg"] = gross, ["tareKg"] = 600, ["stable"] = true, ["temperatureC"] = 1452,
    };

    private static Task<HttpResponseMessage> Send(HttpClient client, Dictionary<string, object?> body) =>
        client.PostAsJsonAsync(new Uri("/api/v1/taps", UriKind.Relative), body, TestContext.Current.CancellationToken);

    private static async Task Refused(HttpResponseMessage answer, string path, string words)
    {
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var errors = (await answer.ReadJsonAsync()).GetProperty("errors");
        Assert.True(errors.TryGetProperty(path, out var at), errors.GetRawText());
        Assert.Contains(words, at[0].GetString(), StringComparison.Ordinal);
    }
}
