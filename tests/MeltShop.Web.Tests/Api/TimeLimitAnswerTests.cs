using System.Text.Json;
using MeltShop.Charging.Workers;
using MeltShop.Web.Tests.Pages.Charge;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api;

/// <summary>A charge of whole pieces whose search came to no end.</summary>
[Collection(nameof(Alone))]
public sealed class TimeLimitAnswerTests(WebApp app) : IClassFixture<WebApp>, IDisposable
{
    // Pieces of 25 kg: 11 of a and 625 kg of b are found without the worker, and nobody has proven them the cheapest. Pieces of 500 kg: none is too much carbon,
    // one too little. Cut, b = 25.6/0.041 = 624.390244 and a = 275.609756 kg at 0.5 and 0.3 a kilogram cost 394.878049; 11 pieces and 625 kg cost 395.
    [Theory]
    [InlineData("25", true)]
    [InlineData("500", false)]
    public async Task Charge_WhoseSearchCameToNoEnd_SaysHowFarItMayBeOff(string pieceKg, bool isPlanned)
    {
        using var machine = await app.CreateMachineAsync();
        // A worker that takes the question and is gone.
        PieceWorkers.Use(new("/bin/sh", "-c", "read line; exit 1"));
        var answer = await machine.AskAsync("charge", Bodies.With(Bodies.With(Bodies.Charge, "materials[0].pieceKg", pieceKg), "meltToleranceKg", "50"));

        Assert.Equal("timeLimit", answer.GetProperty("status").GetString());
        Assert.Equal(isPlanned, answer.GetProperty("lines").EnumerateArray().Any());
        foreach (var figure in new[] { "totalCost", "costPerTonne", "liquidKg" }) Assert.Equal(isPlanned, answer.GetProperty(figure).ValueKind == JsonValueKind.Number);
        Assert.Equal(isPlanned, answer.TryGetProperty("gapPercent", out var gap));
        if (isPlanned) Assert.Equal(100 * (395 - 394.878049) / 395, gap.GetDouble(), 1e-6);
        Assert.Equal(!isPlanned, answer.TryGetProperty("uncut", out var uncut));
        if (!isPlanned)
        {
            Assert.Equal(394.878049, uncut.GetProperty("totalCost").GetDouble(), 1e-6);
            Assert.Equal(1000, uncut.GetProperty("liquidKg").GetDouble(), 1e-6);
            Assert.Equal([275.609756, 624.390244], uncut.GetProperty("lines").EnumerateArray().Select(line => Math.Round(line.GetProperty("kg").GetDouble(), 6)));
            Assert.Equal(3.0, uncut.GetProperty("analysis").GetProperty("C").GetDouble(), 1e-6);
        }

        // Nothing was proven, so that nothing clashes.
        Assert.Empty(answer.GetProperty("conflicts").EnumerateArray());
    }

    public void Dispose() => PieceWorkers.Use(null);
}
