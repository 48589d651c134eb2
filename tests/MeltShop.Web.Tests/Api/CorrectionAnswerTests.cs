using System.Text.Json;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api;

public sealed class CorrectionAnswerTests(WebApp app) : IClassFixture<WebApp>
{
    // A bath of 3000 kg to be brought from C 3.25, Si 1.70, Mn 0.55 to exactly 3.35, 2.00, 0.65 by graphite, ferro-silicon and
    // ferro-manganese at once: three equations in three unknowns, solved apart from this program; case of our own, no source.
    private const string ThreeAtOnce = """
        {"bathKg": 3000, "temperatureC": 1450, "analysis": {"C": 3.25, "Si": 1.70, "Mn": 0.55},
         "additions": [
           {"code": "graphite", "pricePerTonne": 900, "analysis": {"C": 99}, "recoveryPercent": {"C": 90}, "heatKWhPerTonne": 1180},
           {"code": "FeSi", "pricePerTonne": 1500, "analysis": {"C": 0.1, "Si": 75, "Mn": 0.3}, "recoveryPercent": {"C": 90, "Si": 92, "Mn": 90}, "heatKWhPerTonne": -160},
           {"code": "FeMn", "pricePerTonne": 1400, "analysis": {"C": 6.8, "Si": 1, "Mn": 75}, "recoveryPercent": {"C": 90, "Si": 90, "Mn": 90}, "heatKWhPerTonne": 150}],
         "limits": [{"quantity": "C", "min": 3.35, "max": 3.35}, {"quantity": "Si", "min": 2.0, "max": 2.0}, {"quantity": "Mn", "min": 0.65, "max": 0.65}]}
        """;

    [Fact]
    public async Task Correction_ThreeElementsAtOnce_GivesTheMassesOfTheThreeEquations()
    {
        var answer = await AskAsync(ThreeAtOnce);

        Assert.Equal("optimal", answer.GetProperty("status").GetString());
        var kilograms = answer.GetProperty("lines").EnumerateArray().ToDictionary(l => l.GetProperty("code").GetString()!, l => l.GetProperty("kg").GetDouble());
        Assert.Equal(3.80487, kilograms["graphite"], 5);
        Assert.Equal(13.57466, kilograms["FeSi"], 5);
        Assert.Equal(4.58649, kilograms["FeMn"], 5);
        Assert.Equal(3020.3897, answer.GetProperty("bathKgAfter").GetDouble(), 4);
        Assert.Equal(4.3245, answer.GetProperty("temperatureDropC").GetDouble(), 4);
        Assert.Equal(0, answer.GetProperty("tapOffKg").GetDouble());
    }

    [Fact]
    public async Task Correction_AlloyWithoutItsHeat_SaysWhyThereIsNoTemperature()
    {
        var answer = await AskAsync(Bodies.With(ThreeAtOnce, "additions[1].heatKWhPerTonne", "null"));

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("temperatureDropC").ValueKind);
        Assert.Contains("FeSi", answer.GetProperty("why").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Correction_Margin_EndsSoFarInside()
    {
        var answer = await AskAsync(Bodies.With(Bodies.Correction, "limits[0].margin", "0.02"));

        Assert.Equal(3.52, answer.GetProperty("analysis").GetProperty("C").GetDouble(), 6);
        Assert.Equal(3.5, answer.GetProperty("limits")[0].GetProperty("min").GetDouble());
        Assert.Equal("min", answer.GetProperty("limits")[0].GetProperty("binding").GetString());
    }

    [Fact]
    public async Task Correction_TooHighAndMayTapOff_TapsOffFirst()
    {
        // Manganese 0.60 → 0.50 by steel without any, capacity 1000 kg: 1000 − t of the bath and t of steel, 0.6 (1 − t/1000) = 0.5.
        var answer = await AskAsync("""
            {"bathKg": 1000, "temperatureC": 1450, "analysis": {"Mn": 0.6}, "capacityKg": 1000, "maxTapOffKg": 400, "tapOffCostPerTonne": 90,
             "additions": [{"code": "steel", "pricePerTonne": 300, "analysis": {}}], "limits": [{"quantity": "Mn", "max": 0.5}]}
            """);

        Assert.Equal(1000.0 / 6, answer.GetProperty("tapOffKg").GetDouble(), 5);
        Assert.Equal((90 + 300) / 6.0, answer.GetProperty("totalCost").GetDouble(), 5);
        Assert.Equal(1000, answer.GetProperty("bathKgAfter").GetDouble(), 5);
    }

    private async Task<JsonElement> AskAsync(string body) => await (await app.CreateMachineAsync()).AskAsync("correction", body);
}
