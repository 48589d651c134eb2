using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api.Weighings;

/// <summary>What a scale sends, and what it is answered.</summary>
public sealed class WeighingEndpointTests(ScaleShop app) : IClassFixture<ScaleShop>
{
    [Fact]
    public async Task Weighing_GrossAndTare_IsRecordedNetAndOnceHoweverOftenItIsSent()
    {
        using var scale = await app.CreateMachineAsync();
        var before = (await app.Weighings()).Count;
        using var first = await Send(scale, Weighing("bucket-1"));
        using var again = await Send(scale, Weighing("bucket-1"));

        Assert.Equal((HttpStatusCode.OK, HttpStatusCode.OK), (first.StatusCode, again.StatusCode));
        Assert.Equal((await first.ReadJsonAsync()).GetRawText(), (await again.ReadJsonAsync()).GetRawText());
        var weighings = await app.Weighings();
        Assert.Equal(before + 1, weighings.Count);
        Assert.Equal((1000.5, false), (weighings[^1].Kg, weighings[^1].IntoBath));
    }

    [Fact]
    public async Task Weighing_SentByManyAtOnceUnderOneName_IsRecordedOnce()
    {
        using var scale = await app.CreateMachineAsync();
        var before = (await app.Weighings()).Count;
        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Send(scale, Weighing("bucket-at-once"))));

        Assert.All(answers, answer => Assert.Equal(HttpStatusCode.OK, answer.StatusCode));
        Assert.Equal(before + 1, (await app.Weighings()).Count);
        foreach (var answer in answers) answer.Dispose();
    }

    [Fact]
    public async Task Weighing_OtherFiguresUnderATakenName_IsRefused()
    {
        using var scale = await app.CreateMachineAsync();
        using var first = await Send(scale, Weighing("bucket-2"));
        using var other = await Send(scale, Weighing("bucket-2", gross: 1300));

        await Refused(other, "id", "each needs its own id");
    }

    [Fact]
    public async Task Weighing_WithItsLot_IsRecordedWithItAndIsAnotherUnderAnotherLot()
    {
        using var scale = await app.CreateMachineAsync();
        var body = Weighing("bucket-lot");
        body["lot"] = " P 26-4 ";
        using var first = await Send(scale, body);
        using var again = await Send(scale, body);
        body["lot"] = "P 26-5";
        using var other = await Send(scale, body);

        Assert.Equal((HttpStatusCode.OK, HttpStatusCode.OK), (first.StatusCode, again.StatusCode));
        Assert.Equal("P 26-4", (await first.ReadJsonAsync()).GetProperty("lot").GetString());
        Assert.Equal("P 26-4", (await app.Weighings())[^1].Lot);
        await Refused(other, "id", "each needs its own id");
    }

    [Fact]
    public async Task Weighing_Late_KeepsTheTimeOfTheScale()
    {
        using var scale = await app.CreateMachineAsync();
        var weighedAt = new DateTimeOffset(TimeProvider.System.GetUtcNow().AddMinutes(-30).Ticks / TimeSpan.TicksPerSecond * TimeSpan.TicksPerSecond, TimeSpan.Zero);
        using var answer = await Send(scale, Weighing("bucket-3", observedAt: weighedAt.ToOffset(TimeSpan.FromHours(1)).ToString("O", CultureInfo.InvariantCulture)));

        Assert.Equal(weighedAt, (await answer.ReadJsonAsync()).GetProperty("observedAt").GetDateTimeOffset());
    }

    public static TheoryData<string, object?, string, string> Wrong => new()
    {
        { "stable", false, "stable", "does not stand still" },
        { "stable", null, "stable", "" },
        { "stable", "yes", "stable", "true or false" },
        { "tareKg", 1250.5, "tareKg", "nothing is left" },
        { "tareKg", -1, "tareKg", "cannot be negative" },
        { "grossKg", null, "grossKg", "" },
        { "heat", "T-1999-0001", "heat", "There is no heat T-1999-0001" },
        { "material", "slag", "material", "There is no material slag" },
        { "by", "nobody", "by", "send the name of the person" },
        { "by", "ivo", "by", "may not weigh in" },
        { "grossKg", 4250.5, "grossKg", "The furnace holds 3000 kg" },
        { "grossKg", 1e9, "grossKg", "cannot be for it" },
        { "observedAt", "2020-01-05T06:30:00+01:00", "observedAt", "began only at" },
        { "observedAt", "2120-01-05T06:30:00+01:00", "observedAt", "ahead" },
        { "observedAt", "yesterday", "observedAt", "with its offset" },
        { "observedAt", "2026-01-05T06:30:00", "observedAt", "with its offset" },
        { "unit", "lb", "unit", "" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public async Task Weighing_Wrong_IsToldAtItsFieldAndNotRecorded(string field, object? value, string path, string words)
    {
        using var scale = await app.CreateMachineAsync();
        var before = (await app.Weighings()).Count;
        var body = Weighing("wrong-" + Guid.NewGuid());
        body[field] = value;
        using var answer = await Send(scale, body);

        await Refused(answer, path, words);
        Assert.Equal(before, (await app.Weighings()).Count);
    }

    [Fact]
    public async Task Weighing_WithoutAKey_IsRefused()
    {
        using var stranger = app.CreateClient();
        using var answer = await Send(stranger, Weighing("stranger"));

        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
    }

    private Dictionary<string, object?> Weighing(string id, double gross = 1250.5, string? observedAt = null) => new()
    {
        ["id"] = id, ["heat"] = app.HeatNumber, ["material"] = "pig", ["by"] = "Tilda", ["grossKg"] = gross, ["tareKg"] = 250, ["stable"] = true, ["observedAt"] = observedAt,
    };

    private static Task<HttpResponseMessage> Send(HttpClient client, Dictionary<string, object?> body) =>
        client.PostAsJsonAsync(new Uri("/api/v1/weighings", UriKind.Relative), body, TestContext.Current.CancellationToken);

    private static async Task Refused(HttpResponseMessage answer, string path, string words)
    {
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var errors = (await answer.ReadJsonAsync()).GetProperty("errors");
        Assert.True(errors.TryGetProperty(path, out var at), errors.GetRawText());
        Assert.Contains(words, at[0].GetString(), StringComparison.Ordinal);
    }
}
