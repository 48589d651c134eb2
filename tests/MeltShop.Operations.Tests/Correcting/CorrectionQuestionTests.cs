using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Heat;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Tests.Shops;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Correcting;

/// <summary>What the records make of a correction. How it is solved is tested with the optimiser.</summary>
public sealed class CorrectionQuestionTests(OneShop one) : IClassFixture<OneShop>
{
    private readonly Shop shop = one.Shop;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Question_OfABathThatLacksCarbonAndSilicon_TakesTheBathTheWindowAndTheAdditions()
    {
        var facts = await Facts();
        var (problem, findings) = CorrectionQuestion.Build(facts, new(1450));

        Assert.Empty(findings);
        Assert.Equal(facts.Bath.Metal.Kg, problem!.Bath.Kg);
        Assert.Equal(3000, problem.CapacityKg);
        Assert.Equal(["C", "Si", "Mn"], problem.Limits.Select(limit => limit.Quantity.Name));
        Assert.Equal(["carbon", "fesi", "pig", "steel"], problem.Additions.Select(a => a.Code).Order(StringComparer.Ordinal)); // to add, and to dilute with
        Assert.Null(problem.TapOffCostPerTonne);
    }

    [Fact]
    public async Task Proposal_ForEachGoal_IsTheLeastOfItsOwnAndEndsInside()
    {
        var facts = await Facts();
        var proposals = Enum.GetValues<CorrectionGoal>().ToDictionary(goal => goal, goal => Propose(facts, new(1450, goal)));

        Assert.All(proposals.Values, proposal => Assert.True(proposal.IsReached));
        Assert.All(proposals.Values.SelectMany(p => p.Plan.Plan.Limits), limit => Assert.InRange(limit.Value, (limit.Min ?? 0) - 1e-6, (limit.Max ?? 100) + 1e-6));
        Assert.Equal(proposals.Values.Min(p => p.Cost), proposals[CorrectionGoal.Cost].Cost, 6);
        Assert.Equal(proposals.Values.Min(Kilograms), Kilograms(proposals[CorrectionGoal.Kilograms]), 6);
        Assert.Equal(proposals.Values.Min(p => p.Plan.TemperatureDropC!.Value), proposals[CorrectionGoal.Cooling].Plan.TemperatureDropC!.Value, 3);
    }

    [Fact]
    public async Task Proposal_PricedAtTheYard_CostsWhatItsLinesCost()
    {
        var proposal = Propose(await Facts(), new(1450, CorrectionGoal.Kilograms));

        var byHand = proposal.Plan.Plan.Lines.Sum(line => line.Kg * line.Code switch { "carbon" => 0.6, "fesi" => 1.6, "pig" => 0.42, _ => 0.3 });
        Assert.Equal(byHand, proposal.Cost, 9);
    }

    // Fall × 0.23 kWh/(t·K) × t / efficiency, and that at the furnace's 1800 kW: by hand from the plan's own fall.
    [Fact]
    public async Task Proposal_ThatCools_SaysEnergyAndMinutesToComeBack()
    {
        var proposal = Propose(await Facts(), new(1450));

        var energy = proposal.Plan.TemperatureDropC!.Value * 0.23 * proposal.Plan.Plan.LiquidKg / 1000 / 0.66;
        Assert.Equal(energy, proposal.EnergyKWh!.Value, 9);
        Assert.Equal(energy * 60 / 1800, proposal.Minutes!.Value, 9);
    }

    [Fact]
    public async Task Question_WithAMaterialLeftOut_DoesNotOfferIt()
    {
        var (problem, _) = CorrectionQuestion.Build(await Facts(), new(1450, LeftOut: ["carbon"]));

        Assert.DoesNotContain("carbon", problem!.Additions.Select(a => a.Code));
    }

    // Without a recovery all of the magnesium would count as staying.
    [Theory]
    [InlineData(null, false)]
    [InlineData(30.0, true)]
    public async Task Question_WithReturnsOfTreatedIron_OffersThemOnlyWithARecoveryOfTheirMagnesium(double? recoveryPercent, bool isOffered)
    {
        var facts = await Facts();
        var steel = facts.View.Materials.Single(m => m.Code == "steel");
        var returns = steel with
        {
            Code = "returns", Analysis = steel.Analysis! with { Percents = [new(Element.C, 3.6, null, null), new(Element.Mg, 0.04, null, recoveryPercent)] },
        };
        var (problem, _) = CorrectionQuestion.Build(facts with { View = facts.View with { Materials = [.. facts.View.Materials, returns] } }, new(1450));

        Assert.Equal(isOffered, problem!.Additions.Any(a => a.Code == "returns"));
    }

    [Theory]
    [InlineData(900, 0, null, "temperatureC", "temperature.outOfRange")]
    [InlineData(1450, -1, null, "maxTapOffKg", "mass.negative")]
    [InlineData(1450, 100, null, "tapOffCostPerTonne", "price.missing")]
    [InlineData(1450, 100, 0, "tapOffCostPerTonne", "number.notPositive")]
    public async Task Question_WrongInput_IsFoundAtItsField(double temperatureC, double tapOffKg, int? cost, string path, string code)
    {
        var (problem, findings) = CorrectionQuestion.Build(await Facts(), new(temperatureC, MaxTapOffKg: tapOffKg, TapOffCostPerTonne: cost));

        Assert.Null(problem);
        Assert.Contains((path, code), findings.Select(f => (f.Path, f.Code)));
    }

    // With tapping off priced, nothing is tapped where additions suffice.
    [Fact]
    public async Task Proposal_WhereAdditionsSuffice_TapsNothingOff() =>
        Assert.Equal(0, Propose(await Facts(), new(1450, MaxTapOffKg: 500, TapOffCostPerTonne: 200)).Plan.TapOffKg);

    [Fact]
    public async Task OtherGrades_OfADuctileBath_AreThoseThatCanBeReached()
    {
        var others = OtherGrade.Of(await Facts(), new(1450), Soon).Found;

        var grey = Assert.Single(others);
        Assert.Equal("EN-GJL-250", grey.Grade.Code);
        Assert.True(grey is { Kg: > 0, Cost: > 0 });
    }

    // Heats of solution: about 1180 kWh/t for carbon, -160 at 75 % silicon (from memory); 341 for steel at 1450 °C.
    [Theory]
    [InlineData("C", 98, 1180.0)]
    [InlineData("Si", 75, -160.0)]
    [InlineData("Mn", 0.6, 341.0)]
    [InlineData("Mn", 75, null)]
    [InlineData("Cu", 99, null)]
    public void AdditionGuide_OfAMaterial_KnowsItsHeatOrSaysThatItDoesNot(string element, double percent, double? expected) =>
        Assert.Equal(expected, AdditionGuide.KWhPerTonne(Analysis.Of((Element.Parse(element), percent)), 1450));

    private static CorrectionProposal Propose(CorrectionFacts facts, CorrectionChoice choice)
    {
        var (problem, findings) = CorrectionQuestion.Build(facts, choice);
        Assert.Empty(findings);
        return CorrectionProposal.For(facts, choice, problem!, Soon);
    }

    private static double Kilograms(CorrectionProposal proposal) => proposal.Plan.TapOffKg + proposal.Plan.Plan.Lines.Sum(line => line.Kg);

    private async Task<CorrectionFacts> Facts()
    {
        await using var db = shop.Db();
        var heatId = await db.Heats.Select(h => (long?)h.Id).FirstOrDefaultAsync(Soon) ?? (await AcceptCorrectionTests.Low(shop)).Heat.Id;
        return (await shop.Get<CorrectionForecast>().Facts(heatId, Soon))!;
    }
}
