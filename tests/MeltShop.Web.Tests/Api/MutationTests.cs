using System.Globalization;
using System.Net;
using MeltShop.Web.Api.Description;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api;

/// <summary>Whatever comes in, the answer is an answer or a refusal that says where: never a fault of ours.</summary>
public sealed class MutationTests(WebApp app) : IClassFixture<WebApp>
{
    private static readonly int Bodies = int.Parse(Environment.GetEnvironmentVariable("MELTSHOP_TEST_MUTATIONS") ?? "150", CultureInfo.InvariantCulture);
    private static readonly int FirstSeed = int.Parse(Environment.GetEnvironmentVariable("MELTSHOP_TEST_SEED") ?? "20261125", CultureInfo.InvariantCulture);

    private const string PiecesAndScatter = """
        {"meltKg": 3000, "meltToleranceKg": 60, "heel": {"kg": 300, "analysis": {"C": 3.5, "Si": 2, "Cr": 0.1}},
         "materials": [
           {"code": "bales", "pricePerTonne": 280, "analysis": {"C": 0.1, "Mn": 0.6, "Cr": 0.1}, "spread": {"Cr": 0.04, "Mn": 0.1}, "metallicYieldPercent": 94, "pieceKg": 120, "maxPercent": 50},
           {"code": "returns", "pricePerTonne": 0, "analysis": {"C": 3.6, "Si": 2.4, "Mg": 0.04}, "recoveryPercent": {"Mg": 0}, "availableKg": 1500, "minPercent": 20},
           {"code": "pigs", "pricePerTonne": 470, "analysis": {"C": 4.2, "Si": 0.9, "P": 0.04}, "pieceKg": 22, "minKg": 110, "maxKg": 2000},
           {"code": "carburiser", "pricePerTonne": 800, "analysis": {"C": 98.5}, "recoveryPercent": {"C": 88}},
           {"code": "FeSi", "pricePerTonne": 1400, "analysis": {"Si": 75}, "recoveryPercent": {"Si": 92}}],
         "limits": [{"quantity": "C", "min": 3.5, "max": 3.8}, {"quantity": "Si", "min": 1.6, "max": 2.4}, {"quantity": "Cr", "max": 0.12}, {"quantity": "Mn", "max": 0.5},
           {"quantity": "tramp", "terms": {"Cr": 4.9, "Mn": 0.37}, "constant": 0.1, "max": 1.2}],
         "confidencePercent": 95}
        """;

    private const string TapOff = """
        {"bathKg": 5900, "temperatureC": 1470, "analysis": {"C": 3.9, "Si": 2.1, "Mn": 0.7},
         "additions": [
           {"code": "steel", "pricePerTonne": 330, "analysis": {"C": 0.1, "Si": 0.2, "Mn": 0.3}, "recoveryPercent": {"C": 95}, "metallicYieldPercent": 98, "pieceKg": null, "maxPercent": 100},
           {"code": "FeSi", "pricePerTonne": 1500, "analysis": {"Si": 75}, "recoveryPercent": {"Si": 95}, "heatKWhPerTonne": -160, "availableKg": 200}],
         "limits": [{"quantity": "C", "max": 3.7, "margin": 0.01}, {"quantity": "Mn", "max": 0.6}, {"quantity": "Si", "min": 2.0, "max": 2.3}],
         "maxAdditionKg": 1500, "capacityKg": 6000, "maxTapOffKg": 1500, "tapOffCostPerTonne": 60}
        """;

    [Theory]
    [InlineData("charge", Examples.Charge)]
    [InlineData("charge", PiecesAndScatter)]
    [InlineData("correction", Examples.Correction)]
    [InlineData("correction", TapOff)]
    [InlineData("treatment", Examples.Treatment)]
    [InlineData("analysis", Examples.Analysis)]
    [InlineData("burns", Examples.Burns)]
    public async Task Request_ChangedAtRandom_IsAnsweredOrRefused(string endpoint, string body)
    {
        using var client = await app.CreateMachineAsync();
        var faults = new List<string>();
        var answered = 0;
        for (var seed = FirstSeed; seed < FirstSeed + Bodies; seed++)
        {
            var changed = new Mutation(new Random(seed)).Of(body);
            using var response = await client.SendJsonAsync(endpoint, changed);
            if (response.StatusCode == HttpStatusCode.OK)
                answered++;
            else if (response.StatusCode != HttpStatusCode.BadRequest || !(await response.ReadJsonAsync()).GetProperty("errors").EnumerateObject().Any())
                faults.Add($"seed {seed}: {(int)response.StatusCode} for {changed}");
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
        // Were all refused, nothing behind the reading would have been tried.
        Assert.InRange(answered, 1, Bodies - 1);
    }
}
