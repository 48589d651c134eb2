using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Published;

/// <summary>
/// Source: foundry blend of an exercise (author not named), 4 t of iron of three scraps; as printed it has no solution: C ≤ 3.40 forces 3.226 %
/// of steel into the remelt, which leaves 2.2306 % Si where 2.25 are asked. Derived: shortfall 0.019355 %.
/// </summary>
public class InfeasibleBlendTests
{
    [Fact]
    public void FoundryBlend_AsPrinted_NamesCarbonAndSiliconAndHowNearTheyGet()
    {
        var plan = ChargeOptimiser.Plan(
            new ChargeProblem
            {
                MeltKg = 4000,
                Materials =
                [
                    Material("steel", 1050, (Element.C, 0.4), (Element.Si, 0.15)),
                    Material("cast scrap", 900, (Element.C, 3.8), (Element.Si, 2.4)),
                    Material("remelt", 750, (Element.C, 3.5), (Element.Si, 2.3)),
                ],
                Limits = [Limit(Element.C, 3.2, 3.4), Limit(Element.Si, 2.25, 2.35)],
            },
            TestContext.Current.CancellationToken);

        Assert.Equal(PlanStatus.Infeasible, plan.Status);
        Assert.Empty(plan.Lines);
        Assert.Equal([("C", "max", 3.4), ("Si", "min", 2.25)], plan.Conflicts.Select(c => (c.Quantity, c.Bound!, c.Limit!.Value)));
        Assert.Equal(0.019355, 2.25 - plan.Conflicts[1].Nearest!.Value, 5e-7);

        // With silicon held at 2.25, carbon comes down to where remelt and steel cross it: 0.4 + 3.1 × 2.10 / 2.15.
        Assert.Equal(0.4 + 3.1 * 2.10 / 2.15, plan.Conflicts[0].Nearest!.Value, 1e-9);
    }
}
