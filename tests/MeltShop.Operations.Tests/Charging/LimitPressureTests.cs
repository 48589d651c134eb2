using MeltShop.Charging;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Operations.Charging;

namespace MeltShop.Operations.Tests.Charging;

/// <summary>What limits add to the price of what is left out, by pencil.</summary>
public sealed class LimitPressureTests
{
    // 1000 kg with 0.6 % of manganese at most: half of it at 300 with 0.2 %, half at 250 with 1.0 %. A point of manganese more would save 62.50 a tonne; a tonne at
    // 1.4 % brings 0.8 points more than the melt may hold, so that it is 50 dearer than its price: it would come in below 275 − 50 = 225.
    [Fact]
    public void Material_RicherThanTheMelt_IsDearerByWhatTheLimitCosts()
    {
        var problem = Problem(Material("c", 280, 1.4));
        var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);
        var pressure = Assert.Single(LimitPressure.On(problem, plan, problem.Materials[2]));

        Assert.Equal("Mn", pressure.Quantity);
        Assert.Equal(50, pressure.PerTonne, 1e-6);
        Assert.Equal(225, plan.Materials[2].PriceToEnterPerTonne!.Value, 1e-6);
    }

    [Fact]
    public void Material_PoorerThanTheMelt_IsNotMadeDearer()
    {
        var problem = Problem(Material("c", 400, 0.1));
        var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);

        Assert.Empty(LimitPressure.On(problem, plan, problem.Materials[2]));
    }

    // Under confidence the melt keeps away from its bound: what a material brings counts from the bound, which one of exactly 0.6 % does not move.
    [Fact]
    public void Material_UnderConfidence_IsDearerThanOneOnTheBoundByWhatTheLimitCosts()
    {
        var scattering = Material("b", 250, 1.0) with { SpreadPercent = new Dictionary<Element, double> { [Element.Mn] = 0.1 } };
        var problem = Problem(Material("c", 280, 1.4)) with { ConfidencePercent = 90 };
        problem = problem with { Materials = [problem.Materials[0], scattering, problem.Materials[2], Material("d", 400, 0.6)] };
        var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);

        Assert.Empty(LimitPressure.On(problem, plan, problem.Materials[3]));
        var pressure = Assert.Single(LimitPressure.On(problem, plan, problem.Materials[2]));
        Assert.Equal(plan.Materials[3].PriceToEnterPerTonne!.Value - plan.Materials[2].PriceToEnterPerTonne!.Value, pressure.PerTonne, 1e-4);
    }

    private static ChargeProblem Problem(ChargeMaterial third) => new()
    {
        MeltKg = 1000,
        Materials = [Material("a", 300, 0.2), Material("b", 250, 1.0), third],
        Limits = [new(LinearQuantity.Of(Element.Mn), null, 0.6)],
    };

    private static ChargeMaterial Material(string code, double price, double manganese) => new()
    {
        Code = code, PricePerTonne = price, Composition = new MaterialComposition { Analysis = Analysis.Of((Element.Mn, manganese)) },
    };
}
