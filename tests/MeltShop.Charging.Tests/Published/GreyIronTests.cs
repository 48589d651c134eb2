using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Published;

/// <summary>
/// A grey iron of our own invention, not published: 1,000 kg, scattering materials. The figures were made outside this program
/// (simplex and cutting planes of another library) and stand here as a regression.
/// </summary>
public class GreyIronTests
{
    [Fact]
    public void NarrowWindow_OnMeans_CostsTheReference()
    {
        var plan = Solve(50, Limit(Element.C, 3.3, 3.4), Limit(Element.Si, 1.9, 2), Limit(Element.Mn, 0.6, 0.75));

        Assert.Equal(323.2749, plan.TotalCost, 5e-5);
        Assert.Equal(498.654, Kg(plan, "steel"), 5e-4);
        Assert.Equal(500, Kg(plan, "returns"), 1e-6);
        Assert.Equal(13.028, Kg(plan, "ferrosilicon"), 5e-4);
        Assert.Equal(19.043, Kg(plan, "carburiser"), 5e-4);
        Assert.Equal(0.286, Kg(plan, "ferromanganese"), 5e-4);
        Assert.Equal(0.401, Kg(plan, "iron sulphide"), 5e-4);
        Assert.Equal(0, Kg(plan, "pig"), 1e-9);
    }

    [Theory]
    [InlineData(50, 319.6400, 501.854, 10.875, 18.139, 0, 0.402, 0)]
    [InlineData(80, 321.3204, 500.186, 11.520, 18.534, 0.445, 0.657, 0)]
    [InlineData(90, 322.4461, 499.102, 11.856, 18.725, 0.914, 0.790, 0)]
    [InlineData(95, 323.3754, 498.207, 12.133, 18.883, 1.301, 0.900, 0)]
    [InlineData(97.5, 324.1812, 497.431, 12.374, 19.020, 1.635, 0.996, 0)]
    [InlineData(99, 328.4810, 462.567, 11.820, 17.528, 1.906, 1.092, 35.896)]
    public void WideWindow_AtAConfidence_CostsTheReference(
        double confidence, double cost, double steel, double silicon, double carburiser, double manganese, double sulphide, double pig)
    {
        var plan = Solve(confidence, Limit(Element.C, 3.22, 3.48), Limit(Element.Si, 1.75, 2.1), Limit(Element.Mn, 0.55, 0.95));

        Assert.Equal(cost, plan.TotalCost, 1e-4);
        double[] expected = [pig, steel, 500, silicon, carburiser, manganese, sulphide];
        Assert.All(expected.Zip(plan.Materials), p => Assert.Equal(p.First, p.Second.Kg, 1e-3));
    }

    internal static ChargePlan Solve(double confidence, params QuantityLimit[] limits)
    {
        var plan = ChargeOptimiser.Plan(GreyIron.Problem(confidence, limits), TestContext.Current.CancellationToken);
        Assert.Equal(PlanStatus.Optimal, plan.Status);
        return plan;
    }

    private static double Kg(ChargePlan plan, string code) => plan.Materials.Single(m => m.Code == code).Kg;
}
