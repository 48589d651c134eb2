using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using MeltShop.Records.Laboratory;
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
    [InlineData("kind", "spoon", "kind")]
    [InlineData("kind", "cup", "figures")]
    [InlineData("kind", "controlSample", "reference")]
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
    public async Task CupAndWedge_Sent_AreKeptWithTheirFiguresOnceEach()
    {
        await app.Spectrometer(instrument);
        using var machine = await app.CreateMachineAsync();
        foreach (var _ in Enumerable.Range(0, 2))
        {
            using var cup = await Send(machine, Figures("cup-1", "cup", new() { ["liquidusC"] = 1196.8, ["eutecticLowC"] = 1141, ["eutecticHighC"] = 1148.5 }));
            using var wedge = await Send(machine, Figures("wedge-1", "chillWedge", new() { ["chillMm"] = 6.5 }));
            Assert.True(cup.StatusCode == HttpStatusCode.OK, await cup.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
            Assert.Equal((3, 1), ((await cup.ReadJsonAsync()).GetProperty("figures").GetInt32(), (await wedge.ReadJsonAsync()).GetProperty("figures").GetInt32()));
        }

        using var other = await Send(machine, Figures("cup-1", "cup", new() { ["liquidusC"] = 1197 }));
        await Refused(other, "id");
        var samples = await app.Samples(instrument);
        Assert.Equal([SampleKind.Cup, SampleKind.ChillWedge], samples.Select(s => s.Kind));
        Assert.Equal([(FigureQuantity.LiquidusC, 1196.8), (FigureQuantity.EutecticLowC, 1141), (FigureQuantity.EutecticHighC, 1148.5)], samples[0].Figures.Select(f => (f.Quantity, f.Value)).Order());
        Assert.Equal((FigureQuantity.ChillMm, 6.5, "6.5"), (samples[1].Figures[0].Quantity, samples[1].Figures[0].Value, samples[1].Figures[0].InstrumentText));
    }

    [Theory]
    [InlineData("cup", "chillMm", 6.5, "figures.chillMm")]
    [InlineData("cup", "liquidus", 1196, "figures.liquidus")]
    [InlineData("cup", "liquidusC", 196, "figures.liquidusC")]
    [InlineData("chillWedge", "chillMm", -1, "figures.chillMm")]
    [InlineData("bath", "chillMm", 6.5, "figures")]
    public async Task Figure_Wrong_IsToldAtItsFieldAndNotRecorded(string kind, string quantity, double value, string path)
    {
        await app.Spectrometer(instrument);
        using var machine = await app.CreateMachineAsync();
        using var answer = await Send(machine, Figures("wrong", kind, new() { [quantity] = value }));

        await Refused(answer, path);
        Assert.Empty(await app.Samples(instrument));
    }

    [Fact]
    public async Task ControlSample_Sent_IsACheckOfTheInstrumentOnce()
    {
        await app.Spectrometer(instrument);
        var block = "block " + instrument;
        await app.Reference(block);
        using var machine = await app.CreateMachineAsync();
        using var first = await Send(machine, Check("check-1", block, 3.31));
        using var again = await Send(machine, Check("check-1", block, 3.31));
        using var other = await Send(machine, Check("check-1", block, 3.38));
        using var asACoin = await Send(machine, Sample("check-1"));
        using var unknown = await Send(machine, Check("check-2", "no such block", 3.31));
        using var ofAHeat = await Send(machine, new(Check("check-3", block, 3.31)) { ["heat"] = app.HeatNumber });

        Assert.True(first.StatusCode == HttpStatusCode.OK, await first.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Equal((await first.ReadJsonAsync()).GetRawText(), (await again.ReadJsonAsync()).GetRawText());
        await Refused(other, "id");
        await Refused(asACoin, "id");
        await Refused(unknown, "reference");
        await Refused(ofAHeat, "heat");
        var check = Assert.Single(await app.Checks(instrument));
        Assert.Equal((await first.ReadJsonAsync()).GetProperty("controlSampleId").GetInt64(), check.Id);
        Assert.Equal([(1, 3.31, "3.31"), (2, 3.31, "3.31")], check.Readings.OrderBy(r => r.Ordinal).Select(r => (r.Ordinal, r.Percent, r.InstrumentText)));
        Assert.Empty(await app.Samples(instrument));
    }

    [Fact]
    public async Task Sample_WithoutAKey_IsRefused()
    {
        using var stranger = app.CreateClient();
        using var answer = await Send(stranger, Sample("stranger"));
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
    }

    private Dictionary<string, object?> Figures(string id, string kind, Dictionary<string, double> figures) =>
        new(Sample(id).Where(field => kind == "bath" || field.Key != "burns")) { ["kind"] = kind, ["figures"] = figures };

    private Dictionary<string, object?> Check(string id, string reference, double carbon) => new()
    {
        ["id"] = id, ["instrument"] = instrument, ["kind"] = "controlSample", ["reference"] = reference, ["takenAt"] = Now, ["by"] = "tilda",
        ["burns"] = Enumerable.Repeat(new { percent = new Dictionary<string, double> { ["C"] = carbon } }, 2),
    };

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
