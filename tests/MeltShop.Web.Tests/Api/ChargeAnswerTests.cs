using System.Text.Json;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api;

/// <summary>Charges small enough to be solved with a pencil: two materials, one limit.</summary>
public sealed class ChargeAnswerTests(WebApp app) : IClassFixture<WebApp>
{
    // 900 kg of a (0.1 % C, 300/t) and b (4.2 % C, 500/t) on a heel of 100 kg with 3.5 % C have to bring 3.0 % C into 1000 kg:
    // 3.5 + 0.001 a + 0.042 b = 30 and a + b = 900, so b = 25.6/0.041 = 624.390244 and a = 275.609756 kg.
    private const double Rich = 25.6 / 0.041;

    [Fact]
    public async Task Charge_TwoMaterialsOneLimit_CostsWhatThePencilSays()
    {
        var answer = await AskAsync(Bodies.Charge);

        Assert.Equal("optimal", answer.GetProperty("status").GetString());
        Near(0.3 * (900 - Rich) + 0.5 * Rich, answer.GetProperty("totalCost"));
        Near((0.3 * (900 - Rich) + 0.5 * Rich) / 0.9, answer.GetProperty("costPerTonne"));
        Near(1000, answer.GetProperty("liquidKg"));
        Assert.Equal(["a", "b"], answer.GetProperty("lines").EnumerateArray().Select(line => line.GetProperty("code").GetString()));
        Near(Rich, answer.GetProperty("lines")[1].GetProperty("kg"));
        Near(100 * Rich / 900, answer.GetProperty("lines")[1].GetProperty("percent"));
        Near(3.0, answer.GetProperty("analysis").GetProperty("C"));
        Assert.Empty(answer.GetProperty("assumedZero").EnumerateArray());
        Assert.Empty(answer.GetProperty("conflicts").EnumerateArray());
    }

    [Fact]
    public async Task Charge_LimitThatBinds_CostsTheSwapOfOneMaterialForTheOther()
    {
        var limit = (await AskAsync(Bodies.Charge)).GetProperty("limits")[0];

        Assert.Equal("C", limit.GetProperty("quantity").GetString());
        Near(3.0, limit.GetProperty("value"));
        Assert.Equal("min", limit.GetProperty("binding").GetString());
        // 0.01 % of 1000 kg is 0.1 kg C: 0.1/0.041 kg more of b and less of a, at 0.2 a kilogram.
        Near(0.2 * 0.1 / 0.041, limit.GetProperty("marginalCost"));
    }

    [Fact]
    public async Task Charge_PiecesAsked_MarginalCostIsThereAndNull()
    {
        var answer = await AskAsync(Bodies.With(Bodies.With(Bodies.Charge, "materials[0].pieceKg", "25"), "meltToleranceKg", "50"));

        Assert.Equal(
            ["status", "totalCost", "costPerTonne", "liquidKg", "lines", "analysis", "assumedZero", "limits", "materials", "conflicts"],
            answer.EnumerateObject().Select(field => field.Name));
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("limits")[0].GetProperty("marginalCost").ValueKind);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("materials")[0].GetProperty("priceToEnterPerTonne").ValueKind);
    }

    [Fact]
    public async Task Charge_OfWhatIsPaidForAndBringsNoMetal_NeedsABound()
    {
        // Zinc that all burns off, at 20 a tonne for whoever takes it.
        var endless = Bodies.With(Bodies.Charge, "materials[1]", """{"code": "b", "pricePerTonne": -20, "analysis": {"Zn": 100}, "recoveryPercent": {"Zn": 0}}""");
        var body = Bodies.With(Bodies.With(endless, "limits", "[]"), "materials[0].minKg", "900");
        using var machine = await app.CreateMachineAsync();
        using var refused = await machine.SendJsonAsync("charge", body);

        Assert.Equal(System.Net.HttpStatusCode.BadRequest, refused.StatusCode);
        Assert.Contains("Give maxKg or availableKg", (await refused.ReadJsonAsync()).GetProperty("errors").GetProperty("materials[1].maxKg")[0].GetString(), StringComparison.Ordinal);
        Assert.Equal(500, (await AskAsync(Bodies.With(body, "materials[1].availableKg", "500"))).GetProperty("lines")[1].GetProperty("kg").GetDouble(), 6);
    }

    [Fact]
    public async Task Charge_MaterialPaidForAndFree_IsAllowed()
    {
        var answer = await AskAsync(Bodies.With(Bodies.With(Bodies.Charge, "materials[0].pricePerTonne", "-20"), "materials[1].pricePerTonne", "0"));

        Assert.Equal("optimal", answer.GetProperty("status").GetString());
        Near(-0.02 * (900 - Rich), answer.GetProperty("totalCost"));
    }

    [Fact]
    public async Task Charge_LimitBeyondEveryMaterial_NamesItAndTheNearestValue()
    {
        var answer = await AskAsync(Bodies.With(Bodies.Charge, "limits[0]", """{"quantity": "C", "min": 4.5}"""));

        Assert.Equal("infeasible", answer.GetProperty("status").GetString());
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("totalCost").ValueKind);
        var conflict = Assert.Single(answer.GetProperty("conflicts").EnumerateArray());
        Assert.Equal("C", conflict.GetProperty("quantity").GetString());
        Assert.Equal("min", conflict.GetProperty("bound").GetString());
        Near(4.5, conflict.GetProperty("limit"));
        // All of the 900 kg of the rich one: (3.5 + 0.042 · 900)/1000.
        Near(4.13, conflict.GetProperty("nearest"));
    }

    [Fact]
    public async Task Charge_TooLittleStock_NamesTheMassThatCanBeReached()
    {
        var answer = await AskAsync("""
            {"meltKg": 1000, "materials": [{"code": "a", "pricePerTonne": 300, "analysis": {}, "availableKg": 700}], "limits": []}
            """);

        Assert.Equal("infeasible", answer.GetProperty("status").GetString());
        var conflict = Assert.Single(answer.GetProperty("conflicts").EnumerateArray());
        Assert.Equal("meltKg", conflict.GetProperty("quantity").GetString());
        Near(700, conflict.GetProperty("nearest"));
    }

    [Fact]
    public async Task Charge_LimitOnWhatTheHeelDidNotMeasure_SaysThatItIsTakenAsZero()
    {
        var answer = await AskAsync(Bodies.With(Bodies.Charge, "limits[0]", """{"quantity": "CE", "terms": {"C": 1, "Si": 0.3}, "max": 4.5}"""));

        Assert.Equal(["Si"], answer.GetProperty("assumedZero").EnumerateArray().Select(element => element.GetString()));
    }

    private async Task<JsonElement> AskAsync(string body) => await (await app.CreateMachineAsync()).AskAsync("charge", body);

    private static void Near(double expected, JsonElement actual) => Assert.Equal(expected, actual.GetDouble(), Math.Abs(expected) * 1e-6);
}
