using System.Globalization;
using System.Text.Json;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api;

public sealed class TreatmentAnswerTests(WebApp app) : IClassFixture<WebApp>
{
    private const string Case = """
        {"ironKg": 1000, "temperatureC": 1450, "baseAnalysis": {"C": 3.6, "S": 0.015, "Si": 1.5}, "targetMgPercent": 0.045, "atMinutes": 5,
         "alloy": {"analysis": {"Mg": 6, "Si": 45}}, "mgRecoveryPercent": 50, "recoveryTemperatureC": 1450,
         "fade": {"percentPerMinute": 0.001}, "sulphurLeftPercent": 0.010}
        """;

    // The case into which P.-M. Cabanne's general formula (2011) puts 17.93 and 19.19 kg; the contract's closed form, which counts
    // the alloy's mass and exact atomic masses, gives the figures here, worked out by hand.
    [Theory]
    [InlineData(1450, 18.178307)]
    [InlineData(1500, 19.472011)]
    public async Task Treatment_LinearFade_GivesTheMassOfTheClosedForm(double temperatureC, double alloyKg)
    {
        var answer = await AskAsync(Bodies.With(Case, "temperatureC", temperatureC.ToString(CultureInfo.InvariantCulture)));

        Assert.Equal("optimal", answer.GetProperty("status").GetString());
        Assert.Equal(alloyKg, answer.GetProperty("alloyKg").GetDouble(), 6);
        Assert.Equal(alloyKg / 10, answer.GetProperty("alloyPercent").GetDouble(), 7);
        Assert.Equal(0.050, answer.GetProperty("mgAfterTreatmentPercent").GetDouble(), 9);
    }

    [Fact]
    public async Task Treatment_LinearFade_AnswersMassAnalysisAndFading()
    {
        var answer = await AskAsync(Case);

        // F = (1000 · 0.99985 + 18.178307 · 0.94)/(1 − 0.0005 − 0.0001); silicon (15 + 18.178307 · 0.45)/F.
        var after = (1000 * 0.99985 + 18.178307 * 0.94) / 0.9994;
        Assert.Equal(after, answer.GetProperty("massAfterKg").GetDouble(), 5);
        Assert.Equal(100 * (15 + 18.178307 * 0.45) / after - 1.5, answer.GetProperty("siliconPickupPercent").GetDouble(), 6);
        Assert.Equal(0.010, answer.GetProperty("analysisAfter").GetProperty("S").GetDouble(), 9);
        var rows = answer.GetProperty("residualMg").EnumerateArray().ToList();
        Assert.Equal(Enumerable.Range(0, 31), rows.Select(row => row.GetProperty("minutes").GetInt32()));
        Assert.Equal(0.045, rows[5].GetProperty("percent").GetDouble(), 9);
        Assert.Empty(answer.GetProperty("assumedZero").EnumerateArray());
    }

    [Fact]
    public async Task Treatment_SulphurNotMeasured_SaysThatItIsTakenAsZero()
    {
        var answer = await AskAsync(Bodies.With(Case, "baseAnalysis", """{"C": 3.6, "Si": 1.5}"""));

        Assert.Equal(["S"], answer.GetProperty("assumedZero").EnumerateArray().Select(element => element.GetString()));
    }

    [Theory]
    [InlineData("alloy.analysis", """{"Si": 45}""")]
    [InlineData("mgRecoveryPercent", "0")]
    [InlineData("fade", """{"perMinute": 1000}""")]
    public async Task Treatment_NoMassReachesTheTarget_IsInfeasibleWithoutFigures(string at, string json)
    {
        var answer = await AskAsync(Bodies.With(Case, at, json));

        Assert.Equal("infeasible", answer.GetProperty("status").GetString());
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("alloyKg").ValueKind);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("analysisAfter").ValueKind);
        Assert.Empty(answer.GetProperty("residualMg").EnumerateArray());
    }

    private async Task<JsonElement> AskAsync(string body) => await (await app.CreateMachineAsync()).AskAsync("treatment", body);
}
