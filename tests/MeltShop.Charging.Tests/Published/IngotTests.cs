using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Published;

/// <summary>
/// Source: 25 t of steel from all-or-nothing ingots, alloys and scrap, data after C.-H. Westerberg, B. Bjorklund, E. Hultman, "An Application of
/// Mixed Integer Programming in a Swedish Steel Mill", Interfaces 7 (1977) 39–43. Optimum 8,495 from memory; solved again with GLPK and CBC.
/// </summary>
public class IngotTests
{
    private static readonly ChargeProblem Heat = new()
    {
        MeltKg = 25_000,
        Materials =
        [
            Ingot(1, 5, 5, 3, 350), Ingot(2, 3, 4, 3, 330), Ingot(3, 4, 5, 4, 310), Ingot(4, 6, 3, 4, 280),
            Material("alloy 1", 500, (Element.C, 8), (Element.Mo, 6)),
            Material("alloy 2", 450, (Element.C, 7), (Element.Mo, 7)),
            Material("alloy 3", 400, (Element.C, 6), (Element.Mo, 8)),
            Material("scrap", 100, (Element.C, 3), (Element.Mo, 9)),
        ],
        Limits = [Limit(Element.C, 5, 5), Limit(Element.Mo, 5, 5)],
    };

    [Fact]
    public void Ingots_AllOrNothing_CostTheRememberedOptimum()
    {
        var plan = ChargeOptimiser.Plan(Heat, TestContext.Current.CancellationToken);

        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.Equal(8495, plan.TotalCost, 1e-6);
        Assert.Equal([5000, 3000, 0, 6000, 7250, 0, 250, 3500], plan.Materials.Select(m => Math.Round(m.Kg, 6)));
    }

    [Fact]
    public void Ingots_AllOrNothing_HaveNoMarginalCosts()
    {
        var plan = ChargeOptimiser.Plan(Heat, TestContext.Current.CancellationToken);

        Assert.All(plan.Limits, l => Assert.Null(l.MarginalCost));
        Assert.All(plan.Limits, l => Assert.Equal(BindingBound.Both, l.Binding));
        Assert.All(plan.Materials, m => Assert.Null(m.PriceToEnterPerTonne));
    }

    [Fact]
    public void Ingots_ThatMayBeCut_CostTheRelaxation()
    {
        var cut = Heat with { Materials = [.. Heat.Materials.Select(m => m with { PieceKg = null })] };
        var plan = ChargeOptimiser.Plan(cut, TestContext.Current.CancellationToken);

        Assert.Equal(8125.60, plan.TotalCost, 5e-3);
        Assert.Equal([5000, 3000, 4000], plan.Materials.Take(3).Select(m => Math.Round(m.Kg, 6)));
        Assert.Equal(0.487, plan.Materials[3].Kg / 6000, 5e-4);
        Assert.Equal(5.8, plan.Materials[4].Kg / 1000, 0.05);
        Assert.Equal([0, 0], plan.Materials.Skip(5).Take(2).Select(m => Math.Round(m.Kg, 6)));
        Assert.Equal(4.28, plan.Materials[7].Kg / 1000, 5e-3);
    }

    private static ChargeMaterial Ingot(int number, double tonnes, double carbon, double molybdenum, double price) =>
        Material($"ingot {number}", price, (Element.C, carbon), (Element.Mo, molybdenum)) with { PieceKg = 1000 * tonnes, MaxKg = 1000 * tonnes };
}
