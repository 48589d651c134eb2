using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Planning;

/// <summary>
/// Two carburisers, small enough for a pencil; figures of the test's own. 1000 kg of steel without carbon or nitrogen and carburiser: 30 kg of carbon wanted, of
/// which a cheap one brings 90 % C with 0.6 % N or S and a dear one 98 % C with 0.02 %.
/// </summary>
public class NitrogenTests
{
    public static readonly TheoryData<string> Impurities = ["N", "S"];

    [Theory]
    [MemberData(nameof(Impurities))]
    public void Carburisers_WithoutALimitOnTheirImpurity_AreTheCheapOne(string impurity)
    {
        var plan = Plan(Element.Parse(impurity));

        Assert.Equal(30 / 0.9, Kg(plan, "cheap"), 1e-6);
        Assert.Equal(0, Kg(plan, "dear"), 1e-9);
        Assert.Equal(0.02, plan.Analysis.OrZero(Element.Parse(impurity)), 1e-9);
    }

    [Theory]
    [MemberData(nameof(Impurities))]
    public void Carburisers_UnderALimitOnTheirImpurity_AreMixedSoThatBothHold(string impurity)
    {
        // 0.90 x + 0.98 y = 30 and 0.006 x + 0.0002 y = 0.09: y = (30 − 0.9 x)/0.98, so x = (0.09 − 0.0002 · 30/0.98)/(0.006 − 0.0002 · 0.9/0.98).
        var cheap = (0.09 - 0.0002 * 30 / 0.98) / (0.006 - 0.0002 * 0.9 / 0.98);
        var plan = Plan(Element.Parse(impurity), Limit(Element.Parse(impurity), null, 0.009));

        Assert.Equal(cheap, Kg(plan, "cheap"), 1e-6);
        Assert.Equal((30 - 0.9 * cheap) / 0.98, Kg(plan, "dear"), 1e-6);
        var limit = plan.Limits.Single(l => l.Quantity == impurity);
        Assert.Equal((BindingBound.Max, true), (limit.Binding, limit.MarginalCost < 0));
    }

    private static ChargePlan Plan(Element impurity, params QuantityLimit[] more) => ChargeOptimiser.Plan(
        new()
        {
            MeltKg = 1000,
            Materials = [Material("steel", 300), Material("cheap", 500, (Element.C, 90), (impurity, 0.6)), Material("dear", 1200, (Element.C, 98), (impurity, 0.02))],
            Limits = [Limit(Element.C, 3, null), .. more],
        },
        TestContext.Current.CancellationToken);

    private static double Kg(ChargePlan plan, string code) => plan.Materials.Single(m => m.Code == code).Kg;
}
