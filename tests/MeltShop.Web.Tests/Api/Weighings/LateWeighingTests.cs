using System.Net.Http.Json;

namespace MeltShop.Web.Tests.Api.Weighings;

/// <summary>A scale without a network sends late: where its load went tells the time of the weighing, and not that of its arrival.</summary>
public sealed class LateWeighingTests(ScaleShop app) : IClassFixture<ScaleShop>
{
    [Theory]
    [InlineData("before", -60, null, false)]
    [InlineData("after", 30, null, true)]
    [InlineData("said", -60, true, true)]
    public async Task Weighing_ThatArrivesAfterTheCoin_IsOfTheChargeWhereItWasWeighedBefore(string id, int seconds, bool? said, bool intoBath)
    {
        var coin = await app.FirstCoin();
        using var scale = await app.CreateMachineAsync();
        using var answer = await scale.PostAsJsonAsync(new Uri("/api/v1/weighings", UriKind.Relative), new Dictionary<string, object?>
        {
            ["id"] = id, ["heat"] = app.HeatNumber, ["material"] = "pig", ["by"] = "Tilda", ["grossKg"] = 300, ["tareKg"] = 250, ["stable"] = true,
            ["observedAt"] = coin.AddSeconds(seconds), ["intoBath"] = said,
        }, TestContext.Current.CancellationToken);

        Assert.True(answer.IsSuccessStatusCode, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Equal(intoBath, (await app.Weighings())[^1].IntoBath);
    }
}
