using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using MeltShop.Records.People;
using MeltShop.Web.Tests.Api.Weighings;
using MeltShop.Web.Tests.Running;
using MeltShop.Web.Tests.SignIn;
using Microsoft.AspNetCore.Mvc.Testing;

namespace MeltShop.Web.Tests.Api.Trends;

/// <summary>The samples of a trend as a file.</summary>
public sealed class TrendEndpointTests(ScaleShop app) : IClassFixture<ScaleShop>
{
    [Fact]
    public async Task Trend_AskedForAsAFile_HoldsTheSamplesOfItsElementAndStep()
    {
        await app.Spectrometer("spark-t");
        var other = await app.Spectrometer("spark-u");
        var taken = TimeProvider.System.GetUtcNow();
        using var machine = await app.CreateMachineAsync();
        foreach (var (id, instrument, carbon, phosphorus) in new[] { ("t-1", "spark-t", 3.61, 0.03), ("t-2", "spark-u", 3.62, (double?)null) })
        {
            using var sent = await machine.PostAsJsonAsync(new Uri("/api/v1/samples", UriKind.Relative), new
            {
                id, instrument, heat = app.HeatNumber, kind = "bath", coin = "=K;1", takenAt = taken.ToString("yyyy-MM-dd'T'HH:mm:ss.ffffff'Z'", CultureInfo.InvariantCulture), by = "tilda", remarks = carbon > 3.615 ? "slag in it, ground again" : null,
                burns = new[] { new { percent = Percents(carbon, phosphorus) } },
            }, TestContext.Current.CancellationToken);
            Assert.True(sent.StatusCode == HttpStatusCode.OK, await sent.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        }

        await app.AddPersonAsync("nele", Role.Supervisor);
        using var browser = new Browser(app);
        using var entered = await browser.SignInAsync("nele", WebApp.Password);
        using var answer = await browser.Client.GetAsync(new Uri("/laboratory/trends.csv?quantity=C", UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.Equal("text/csv", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("trend-C.csv", answer.Content.Headers.ContentDisposition!.FileName);
        var lines = (await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        var at = taken.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
        Assert.Equal(
            ["heat,takenAtUtc,sample,coin,instrument,quantity,value,unit,remarks", $"{app.HeatNumber},{at},Bath,\"'=K;1\",Spectrometer,C,3.61,%,", $"{app.HeatNumber},{at},Bath,\"'=K;1\",Spectrometer,C,3.62,%,\"slag in it, ground again\""], lines);
        Assert.Equal(2, (await Lines(browser, "?quantity=Si")).Count(line => line.Contains(",Si,1.5,%,", StringComparison.Ordinal)));
        Assert.Single(await Lines(browser, "?quantity=C&step=poured")); // the headings
        Assert.Single(await Lines(browser, "?quantity=C&grade=999"));
        Assert.EndsWith(",C,3.62,%,\"slag in it, ground again\"", Assert.Single((await Lines(browser, $"?quantity=C&instrument={other}")).Skip(1)), StringComparison.Ordinal);
        Assert.Single(await Lines(browser, "?quantity=C&instrument=0")); // of no instrument
        Assert.EndsWith(",CE,4.12,%,", Assert.Single((await Lines(browser, "?quantity=CE")).Skip(1)), StringComparison.Ordinal); // 3.61 + (1.5 + 0.03) / 3; the other coin has no phosphorus
        Assert.Equal(3, (await Lines(browser, "?quantity=Xx&after=nonsense")).Length); // as the page does: carbon, the newest
    }

    [Fact]
    public async Task Trend_AskedForByNobody_IsNotAnswered()
    {
        using var stranger = app.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });
        using var answer = await stranger.GetAsync(new Uri("/laboratory/trends.csv?quantity=C", UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.NotEqual(HttpStatusCode.OK, answer.StatusCode);
        Assert.NotEqual("text/csv", answer.Content.Headers.ContentType?.MediaType);
    }

    private static Dictionary<string, double> Percents(double carbon, double? phosphorus)
    {
        var percents = new Dictionary<string, double> { ["C"] = carbon, ["Si"] = 1.5 };
        if (phosphorus is { } known) percents["P"] = known;
        return percents;
    }

    private static async Task<string[]> Lines(Browser browser, string query) =>
        (await browser.Client.GetStringAsync(new Uri("/laboratory/trends.csv" + query, UriKind.Relative), TestContext.Current.CancellationToken)).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
}
