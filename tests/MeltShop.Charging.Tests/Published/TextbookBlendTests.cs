using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Published;

/// <summary>Blends of textbooks. Where the print shows no optimum, it was derived by solving the printed data (said at each).</summary>
public class TextbookBlendTests
{
    /// <summary>
    /// Source: G. B. Dantzig, "Linear Programming and Extensions", Princeton 1963, section 3.4: lead, zinc, tin 30/30/40. The least cost 4.98 is
    /// from memory; 0.6 of B and 0.4 of D follow from the printed data.
    /// </summary>
    [Fact]
    public void LeadZincTin_OfNineAlloys_Costs498()
    {
        double[] lead = [10, 10, 40, 60, 30, 30, 30, 50, 20], zinc = [10, 30, 50, 30, 30, 40, 20, 40, 30];
        double[] price = [4.1, 4.3, 5.8, 6.0, 7.6, 7.5, 7.3, 6.9, 7.3];
        var problem = new ChargeProblem
        {
            MeltKg = 1000,
            Materials = [.. price.Select((p, i) => Material(((char)('A' + i)).ToString(), p, (Element.Pb, lead[i]), (Element.Parse("Zn"), zinc[i]), (Element.Sn, 100 - lead[i] - zinc[i])))],
            Limits = [Limit(Element.Pb, 30, 30), Limit(Element.Parse("Zn"), 30, 30), Limit(Element.Sn, 40, 40)],
        };
        var plan = Solve(problem);

        Assert.Equal(4.98, plan.TotalCost, 1e-9);
        Assert.Equal([("B", 600.0), ("D", 400.0)], plan.Lines.Select(l => (l.Code, Math.Round(l.Kg, 6))));
        Assert.All(plan.Limits, l => Assert.Equal(BindingBound.Both, l.Binding));

        // One, one and two parts of A, B and H meet it too, by hand: at 5.55.
        var byHand = ChargeCheck.Of(problem, new Dictionary<string, double> { ["A"] = 250, ["B"] = 250, ["H"] = 500 });
        Assert.True(byHand.Holds);
        Assert.Equal(5.55, byHand.Costs.Total, 1e-9);
    }

    /// <summary>Source: steel-works tutorial, four irons (author not named); optimum derived from the printed data with GLPK.</summary>
    [Fact]
    public void FourIrons_OfTheTutorial_CostsTheDerivedOptimum()
    {
        var plan = Solve(new ChargeProblem
        {
            MeltKg = 1000,
            Materials =
            [
                Material("1", 50, (Element.C, 2), (Element.Si, 1)),
                Material("2", 40, (Element.C, 5), (Element.Mn, 1)),
                Material("3", 250, (Element.Si, 60), (Element.Mn, 40)),
                Material("4", 350, (Element.Si, 20), (Element.Mn, 80)),
            ],
            Limits = [Limit(Element.C, 2, 4), Limit(Element.Si, 2, 5), Limit(Element.Mn, null, 1)],
        });

        Assert.Equal(52.1212, plan.TotalCost, 5e-5);
        Assert.Equal([787.88, 191.92, 20.20], plan.Lines.Select(l => Math.Round(l.Kg, 2)));
    }

    /// <summary>
    /// Source: F. S. Hillier, G. J. Lieberman, "Introduction to Operations Research", McGraw-Hill, problem of the Metalco company: tin, zinc,
    /// lead 40/35/25, two sets of prices in two editions; optima derived from the printed data.
    /// </summary>
    [Theory]
    [InlineData(new double[] { 77, 70, 88, 84, 94 }, 82.43478)]
    [InlineData(new double[] { 22, 20, 25, 24, 27 }, 23.45652)]
    public void TinZincLead_OfFiveAlloys_CostsTheDerivedOptimum(double[] price, double cost)
    {
        double[] tin = [60, 25, 45, 20, 50], zinc = [10, 15, 45, 50, 40];
        var plan = Solve(new ChargeProblem
        {
            MeltKg = 1000,
            Materials = [.. price.Select((p, i) => Material($"{i + 1}", p, (Element.Sn, tin[i]), (Element.Parse("Zn"), zinc[i]), (Element.Pb, 100 - tin[i] - zinc[i])))],
            Limits = [Limit(Element.Sn, 40, 40), Limit(Element.Parse("Zn"), 35, 35), Limit(Element.Pb, 25, 25)],
        });

        Assert.Equal(cost, plan.TotalCost, 5e-6);
        Assert.Equal([43.48, 282.61, 673.91], plan.Lines.Select(l => Math.Round(l.Kg, 2)));
    }

    /// <summary>
    /// Source: S. P. Bradley, A. C. Hax, T. L. Magnanti, "Applied Mathematical Programming", Addison-Wesley 1977 (charging a furnace with pig iron;
    /// attribution from memory). Melting the pigs at 0.005 a pound is in their prices; optimum derived from the printed data.
    /// </summary>
    [Fact]
    public void PigIronOrder_OfAThousandPounds_CostsTheDerivedOptimum()
    {
        const double melting = 5;
        var plan = Solve(new ChargeProblem
        {
            MeltKg = 1000,
            Materials =
            [
                Material("pig A", 21 + melting, (Element.Si, 4), (Element.Mn, 0.45)),
                Material("pig B", 25 + melting, (Element.Si, 1), (Element.Mn, 0.5)),
                Material("pig C", 15 + melting, (Element.Si, 0.6), (Element.Mn, 0.4)),
                Material("manganese", 8000, (Element.Mn, 100)),
            ],
            Limits = [Limit(Element.Si, 3.25, 5), Limit(Element.Mn, 0.45, null)],
        });

        Assert.Equal(25.5602, plan.TotalCost, 5e-5);
        Assert.Equal(424.4398, 1000 * 0.45 - plan.TotalCost, 5e-5); // sold at 0.45 a pound
        Assert.Equal([779.431, 220.458, 0.111], plan.Lines.Select(l => Math.Round(l.Kg, 3)));
        Assert.Equal(25 + melting - 1.75, plan.Materials[1].PriceToEnterPerTonne!.Value, 5e-3);
    }

    /// <summary>Source: exercise with four metals by density, carbon, phosphorus (author not named); printed shares .285/.595/.12 and cost 1.84 are rounded.</summary>
    [Fact]
    public void DensityBlend_OfFourMetals_AgreesWithThePrintWithinItsRounding()
    {
        // Density stands in for an element that the materials hold at a hundredth of it: a linear property is a linear property.
        var plan = Solve(new ChargeProblem
        {
            MeltKg = 1000,
            Materials =
            [
                Material("A", 2, (Element.Ni, 65), (Element.C, 0.2), (Element.P, 0.05)),
                Material("B", 2.5, (Element.Ni, 58), (Element.C, 0.35), (Element.P, 0.015)),
                Material("C", 1.5, (Element.Ni, 62), (Element.C, 0.15), (Element.P, 0.065)),
                Material("D", 2, (Element.Ni, 59), (Element.C, 0.11), (Element.P, 0.1)),
            ],
            Limits = [Limit(Element.Ni, 59.5, 60.5), Limit(Element.C, 0.1, 0.3), Limit(Element.P, 0.045, 0.055)],
        });

        Assert.Equal(1.844828, plan.TotalCost, 5e-7);
        Assert.Equal([284.48, 594.83, 120.69], plan.Lines.Select(l => Math.Round(l.Kg, 2)));
    }

    private static ChargePlan Solve(ChargeProblem problem)
    {
        var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);
        Assert.Equal(PlanStatus.Optimal, plan.Status);
        return plan;
    }
}
