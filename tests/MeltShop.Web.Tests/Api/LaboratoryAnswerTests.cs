using System.Text.Json;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api;

public sealed class LaboratoryAnswerTests(WebApp app) : IClassFixture<WebApp>
{
    [Fact]
    public async Task Analysis_DuctileIron_AnswersEachQuantityOfTheContract()
    {
        var answer = await AskAsync("analysis", """{"analysis": {"C": 3.3, "Si": 2.0, "Mn": 0.6, "P": 0.05, "S": 0.08, "Cu": 0.5}}""");

        Assert.Equal(
            ["CE", "Sc", "CEL", "liquidusC", "manganeseBalance", "pearliteFactor", "ferritePercent", "traceFactor"],
            answer.EnumerateObject().Select(quantity => quantity.Name));
        Near(answer, "CE", 3.3 + 2.05 / 3);
        Near(answer, "Sc", 3.3 / (4.26 - 2.05 / 3));
        Near(answer, "CEL", 3.3 + 0.5 + 0.025);
        Near(answer, "liquidusC", 1569 - 97.3 * 3.825);
        Near(answer, "manganeseBalance", 0.6 - 1.7 * 0.08);
        Near(answer, "pearliteFactor", 3.00 * 0.6 + 7.75 * 0.5);
        Near(answer, "ferritePercent", 961 * Math.Exp(-(3.00 * 0.6 + 7.75 * 0.5)));
        Assert.Equal("°C", answer.GetProperty("liquidusC").GetProperty("unit").GetString());
        Assert.NotEmpty(answer.GetProperty("CE").GetProperty("source").GetString()!);
        Assert.Contains("Sn", answer.GetProperty("pearliteFactor").GetProperty("assumedZero").EnumerateArray().Select(e => e.GetString()));
    }

    [Fact]
    public async Task Analysis_NothingToGoBy_IsNullWithItsReason()
    {
        var answer = await AskAsync("analysis", """{"analysis": {"C": 3.9, "Si": 2.4, "Mn": 0.2, "S": 0.01, "Mg": 0.04}}""");

        Assert.All(["liquidusC", "manganeseBalance", "pearliteFactor", "ferritePercent", "traceFactor"], name =>
        {
            Assert.Equal(JsonValueKind.Null, answer.GetProperty(name).GetProperty("value").ValueKind);
            Assert.NotEmpty(answer.GetProperty(name).GetProperty("why").GetString()!);
        });
        Assert.Contains("Cu", answer.GetProperty("pearliteFactor").GetProperty("why").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Analysis_OtherFormOfTheCarbonEquivalent_IsUsedAndNamed()
    {
        var answer = await AskAsync("analysis", """{"analysis": {"C": 3.6, "Si": 2.1}, "ceForm": "CE-b"}""");

        Near(answer, "CE", 4.3);
        Assert.Equal("CE-b", answer.GetProperty("CE").GetProperty("form").GetString());
    }

    [Fact]
    public async Task Burns_KnownRepeatability_SuspectsTheFarthestFromTheMedian()
    {
        // Range 0.12 is over 3.314 · 0.02 = 0.0663.
        var carbon = (await AskAsync("burns", """{"burns": [{"C": 3.61, "Si": 2.3}, {"C": 3.60}, {"C": 3.72}], "repeatability": {"C": 0.02}}"""))
            .GetProperty("elements").GetProperty("C");

        Assert.Equal((3.61 + 3.60 + 3.72) / 3, carbon.GetProperty("mean").GetDouble(), 9);
        Assert.Equal(3, carbon.GetProperty("count").GetInt32());
        Assert.Equal(0.12, carbon.GetProperty("range").GetDouble(), 9);
        var suspect = Assert.Single(carbon.GetProperty("suspects").EnumerateArray());
        Assert.Equal(2, suspect.GetProperty("burn").GetInt32());
        Assert.Equal("range", suspect.GetProperty("test").GetString());
        Assert.Equal(5, suspect.GetProperty("level").GetInt32());
    }

    [Fact]
    public async Task Burns_ElementInOneBurnOnly_HasNoDeviationAndSaysWhyThereIsNoTest()
    {
        var silicon = (await AskAsync("burns", """{"burns": [{"C": 3.61, "Si": 2.3}, {"C": 3.60}]}""")).GetProperty("elements").GetProperty("Si");

        Assert.Equal(1, silicon.GetProperty("count").GetInt32());
        Assert.Equal(JsonValueKind.Null, silicon.GetProperty("standardDeviation").ValueKind);
        Assert.NotEmpty(silicon.GetProperty("why").GetString()!);
    }

    private async Task<JsonElement> AskAsync(string endpoint, string body) => await (await app.CreateMachineAsync()).AskAsync(endpoint, body);

    private static void Near(JsonElement answer, string name, double expected) =>
        Assert.Equal(expected, answer.GetProperty(name).GetProperty("value").GetDouble(), 9);
}
