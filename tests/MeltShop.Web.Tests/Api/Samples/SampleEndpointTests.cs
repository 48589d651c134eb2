using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using MeltShop.Web.Tests.Api.Weighings;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api.Samples;

/// <summary>What the computer of an instrument sends, and what it is answered.</summary>
public sealed class SampleEndpointTests(ScaleShop app) : IClassFixture<ScaleShop>
{
    private readonly string instrument = "spark-" + Guid.NewGuid().ToString("N")[..6];

    private static readonly string Now = TimeProvider.System.GetUtcNow().ToString("yyyy-MM-dd'T'HH:mm:ss.ffffff'Z'", CultureInfo.InvariantCulture);

    [Fact]
    public async Task Sample_SentAgainAndAgain_IsRecordedOnceAndAnsweredAlike()
    {
        await app.Spectrometer(instrument);
        using var machine = await app.CreateMachineAsync();
        using var first = await Send(machine, Sample("1"));
        using var again = await Send(machine, Sample("1"));

        Assert.True(first.StatusCode == HttpStatusCode.OK, await first.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Equal(HttpStatusCode.OK, again.StatusCode);
        Assert.Equal((await first.ReadJsonAsync()).GetRawText(), (await again.ReadJsonAsync()).GetRawText());
        var sample = Assert.Single(await app.Samples(instrument));
        Assert.Equal((await first.ReadJsonAsync()).GetProperty("sampleId").GetInt64(), sample.Id);
        Assert.Equal(["3.61", "<0.002"], sample.Burns[0].Readings.OrderBy(r => r.Element).Select(r => r.InstrumentText));
        Assert.Equal(2, sample.Burns.Count);
    }

    [Fact]
    public async Task Sample_ThatBrokeGrey_IsKeptSoAndIsAnotherOneWithoutIt()
    {
        await app.Spectrometer(instrument);
        using var machine = await app.CreateMachineAsync();
        using var sent = await Send(machine, new(Sample("grey")) { ["greyFracture"] = true });
        using var white = await Send(machine, Sample("grey"));

        Assert.Equal(HttpStatusCode.OK, sent.StatusCode);
        Assert.True(Assert.Single(await app.Samples(instrument)).GreyFracture);
        await Refused(white, "id");
    }

    [Fact]
    public async Task Sample_SentByManyAtOnce_IsRecordedOnce()
    {
        await app.Spectrometer(instrument);
        using var machine = await app.CreateMachineAsync();
        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Send(machine, Sample("at-once"))));

        Assert.All(answers, answer => Assert.Equal(HttpStatusCode.OK, answer.StatusCode));
        Assert.Single(await app.Samples(instrument));
        foreach (var answer in answers) answer.Dispose();
    }

    [Fact]
    public async Task Sample_OtherFiguresUnderATakenNumber_IsRefused()
    {
        await app.Spectrometer(instrument);
        using var machine = await app.CreateMachineAsync();
        using var first = await Send(machine, Sample("2"));
        using var other = await Send(machine, Sample("2", carbon: 3.7));

        await Refused(other, "id");
        Assert.Single(await app.Samples(instrument));
    }

    [Theory]
    [InlineData("heat", "T-1999-0001", "heat")]
    [InlineData("heat", null, "heat")]
    [InlineData("instrument", "none", "instrument")]
    [InlineData("by", "nobody", "by")]
    [InlineData("kind", "cup", "kind")]
    [InlineData("kind", "lastMetal", "ladle")]
    [InlineData("takenAt", "2026-01-05T06:30:00", "takenAt")]
    [InlineData("takenAt", "2001-01-05T06:30:00Z", "takenAt")]
    [InlineData("takenAt", "2099-01-05T06:30:00Z", "takenAt")]
    [InlineData("id", "", "id")]
    [InlineData("unit", "ppm", "unit")]
    public async Task Sample_Wrong_IsToldAtItsFieldAndNotRecorded(string field, string? value, string path)
    {
        await app.Spectrometer(instrument);
        using var machine = await app.CreateMachineAsync();
        var body = Sample("wrong");
        body[field] = value;
        using var answer = await Send(machine, body);

        await Refused(answer, path);
        Assert.Empty(await app.Samples(instrument));
    }

    [Fact]
    public async Task Sample_WithoutAKey_IsRefused()
    {
        using var stranger = app.CreateClient();
        using var answer = await Send(stranger, Sample("stranger"));
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
    }

    private Dictionary<string, object?> Sample(string id, double carbon = 3.61) => new()
    {
        ["id"] = id, ["instrument"] = instrument, ["heat"] = app.HeatNumber, ["kind"] = "bath", ["coin"] = "K1", ["takenAt"] = Now, ["by"] = "tilda",
        ["burns"] = new[]
        {
            new { percent = new Dictionary<string, double> { ["C"] = carbon }, below = new Dictionary<string, double> { ["Mg"] = 0.002 } },
            new { percent = new Dictionary<string, double> { ["C"] = 3.62 }, below = new Dictionary<string, double> { ["Mg"] = 0.002 } },
        },
    };

    private static Task<HttpResponseMessage> Send(HttpClient client, Dictionary<string, object?> body) =>
        client.PostAsJsonAsync(new Uri("/api/v1/samples", UriKind.Relative), body, TestContext.Current.CancellationToken);

    private static async Task Refused(HttpResponseMessage answer, string path)
    {
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var errors = (await answer.ReadJsonAsync()).GetProperty("errors");
        Assert.True(errors.TryGetProperty(path, out _), errors.GetRawText());
    }
}
