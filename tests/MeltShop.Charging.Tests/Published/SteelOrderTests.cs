using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Published;

/// <summary>
/// Source: C. Guéret, C. Prins, M. Sevaux, "Applications of Optimization with Xpress-MP", Dash Optimization 2002, chapter on
/// process industries ("production of alloys"): 500 t of steel, printed cost 98,121.60. Sensitivities: re-solved with GLPK and CBC.
/// </summary>
public class SteelOrderTests
{
    private static readonly ChargeProblem Order = new()
    {
        MeltKg = 500_000,
        Materials =
        [
            Material("iron 1", 200, (Element.C, 2.5), (Element.Mn, 1.3)) with { AvailableKg = 400_000 },
            Material("iron 2", 250, (Element.C, 3), (Element.Mn, 0.8)) with { AvailableKg = 300_000 },
            Material("iron 3", 150, (Element.Cu, 0.3)) with { AvailableKg = 600_000 },
            Material("copper 1", 220, (Element.Cu, 90)) with { AvailableKg = 500_000 },
            Material("copper 2", 240, (Element.Cu, 96), (Element.Mn, 4)) with { AvailableKg = 200_000 },
            Material("aluminium 1", 200, (Element.Cu, 0.4), (Element.Mn, 1.2)) with { AvailableKg = 300_000 },
            Material("aluminium 2", 165, (Element.Cu, 0.6)) with { AvailableKg = 250_000 },
        ],
        Limits = [Limit(Element.C, 2, 3), Limit(Element.Cu, 0.4, 0.6), Limit(Element.Mn, 1.2, 1.65)],
    };

    [Fact]
    public void SteelOrder_AsPrinted_CostsWhatIsPrinted()
    {
        var plan = ChargeOptimiser.Plan(Order, TestContext.Current.CancellationToken);

        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.Equal(98_121.635792, plan.TotalCost, 1e-6);
        Assert.Equal(400_000, Kg(plan, "iron 1"), 1e-3);
        Assert.Equal(39_776, Kg(plan, "iron 3"), 0.5);
        Assert.Equal(2_761, Kg(plan, "copper 2"), 0.5);
        Assert.Equal(57_462, Kg(plan, "aluminium 1"), 0.5);
        Assert.Equal(4, plan.Lines.Count);
        Assert.Equal(100, plan.Lines.Sum(l => l.Percent), 1e-9);
    }

    [Theory]
    [InlineData(0, BindingBound.Min, 110.620)]
    [InlineData(1, BindingBound.Max, -4.020)]
    [InlineData(2, BindingBound.Min, 208.668)]
    public void SteelOrder_BoundRaisedByAHundredth_CostsTheRightHandChange(int limit, BindingBound binding, double marginalCost)
    {
        var plan = ChargeOptimiser.Plan(Order, TestContext.Current.CancellationToken);

        Assert.Equal(binding, plan.Limits[limit].Binding);
        Assert.Equal(marginalCost, plan.Limits[limit].MarginalCost!.Value, 5e-4);
    }

    [Fact]
    public void SteelOrder_TheScarceIron_IsSaidToBeWorthWhatOneTonneMoreSaves()
    {
        var bound = Assert.Single(ChargeOptimiser.Explained(Order, TestContext.Current.CancellationToken).Bounds, b => b.Kind is MissKind.Stock);

        Assert.Equal(("iron 1", BindingBound.Max, 400_000), (bound.Name, bound.Binding, bound.Bound));
        Assert.Equal(-4.495, 1000 * bound.RaisedCost!.Value, 5e-4);
    }

    [Fact]
    public void SteelOrder_OneTonneMoreOfTheScarceIron_SavesWhatWasDerived()
    {
        var more = Order with { Materials = [.. Order.Materials.Select(m => m.Code == "iron 1" ? m with { AvailableKg = 401_000 } : m)] };
        var plan = ChargeOptimiser.Plan(more, TestContext.Current.CancellationToken);

        Assert.Equal(-4.495, plan.TotalCost - 98_121.635792, 5e-4);
    }

    private static double Kg(ChargePlan plan, string code) => plan.Lines.Single(l => l.Code == code).Kg;
}
