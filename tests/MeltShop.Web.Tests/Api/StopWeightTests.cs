using System.Text.Json;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api;

/// <summary>
/// The pocket's stop weight and the window worked back from the mould, held against the endpoint that reckons a treatment forward:
/// one balance, three uses. Random ladles with a fixed seed.
/// </summary>
public sealed class StopWeightTests(WebApp app) : IClassFixture<WebApp>
{
    private const int Seed = 2611;

    [Fact]
    public async Task StopWeight_OfAnyPocket_IsTheMassForWhichTheEndpointAsksThatPocket()
    {
        using var machine = await app.CreateMachineAsync();
        var random = new Random(Seed);
        for (var n = 0; n < 40; n++)
        {
            var problem = Problem(random);
            var pocketKg = MagnesiumTreatment.Solve(problem)!.AlloyKg;
            var floor = problem.TargetMgPercent - random.NextDouble() * 0.01;
            var stop = MagnesiumTreatment.LargestIronKg(problem, pocketKg, floor);

            var answer = await machine.AskAsync("treatment", Body(problem, stop, floor));
            Assert.True(stop > problem.IronKg, $"seed {Seed}, ladle {n}");
            Assert.Equal(1, answer.GetProperty("alloyKg").GetDouble() / pocketKg, 9);
        }
    }

    [Fact]
    public async Task FurnaceWindow_WorkedBackFromTheMould_IsWhatTheEndpointTurnsIntoThePouredWindow()
    {
        using var machine = await app.CreateMachineAsync();
        var random = new Random(Seed);
        for (var n = 0; n < 40; n++)
        {
            var problem = Problem(random);
            var sulphur = problem.BaseAnalysis[Element.S]!.Value;
            var route = new PouringRoute(new(problem.Recipe, problem.TemperatureC, problem.TargetMgPercent, problem.AtMinutes, sulphur), []);
            var poured = 2.2 + random.NextDouble() * 0.4;
            var furnace = FurnaceWindow.For(route, [new(LinearQuantity.Of(Element.Si), new(Aim: poured))]).Rows[0].Bounds.Aim!.Value;

            var answer = await machine.AskAsync("treatment", Body(
                problem with { BaseAnalysis = Analysis.Of((Element.Si, furnace), (Element.S, sulphur)) }, problem.IronKg, problem.TargetMgPercent));
            Assert.Equal(poured, answer.GetProperty("analysisAfter").GetProperty("Si").GetDouble(), 9);
        }
    }

    private static TreatmentProblem Problem(Random random)
    {
        double Between(double least, double most) => least + random.NextDouble() * (most - least);
        return new()
        {
            IronKg = Between(400, 3000), TemperatureC = Between(1420, 1520), BaseAnalysis = Analysis.Of((Element.Si, Between(1, 1.8)), (Element.S, Between(0.008, 0.02))),
            TargetMgPercent = Between(0.038, 0.05), AtMinutes = Between(2, 12),
            Recipe = new()
            {
                Alloy = new() { Analysis = Analysis.Of((Element.Mg, Between(4, 9)), (Element.Si, 45)) }, MgRecoveryPercent = Between(35, 75), RecoveryTemperatureC = 1450,
                Fade = new Fade.Linear(Between(0.0005, 0.002)), SulphurLeftPercent = Between(0.004, 0.008),
            },
        };
    }

    private static string Body(TreatmentProblem problem, double ironKg, double mgPercent) => JsonSerializer.Serialize(new
    {
        ironKg,
        temperatureC = problem.TemperatureC,
        baseAnalysis = problem.BaseAnalysis.ToDictionary(p => p.Key.Symbol, p => p.Value),
        targetMgPercent = mgPercent,
        atMinutes = problem.AtMinutes,
        alloy = new { analysis = problem.Recipe.Alloy.Analysis.ToDictionary(p => p.Key.Symbol, p => p.Value) },
        mgRecoveryPercent = problem.Recipe.MgRecoveryPercent,
        recoveryTemperatureC = problem.Recipe.RecoveryTemperatureC,
        fade = new { percentPerMinute = ((Fade.Linear)problem.Recipe.Fade).PercentPerMinute },
        sulphurLeftPercent = problem.Recipe.SulphurLeftPercent,
    });
}
