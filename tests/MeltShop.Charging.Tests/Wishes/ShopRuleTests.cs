using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Wishes;

/// <summary>Rules and wishes of a shop beyond the limits of the iron, each worked out by pencil on two or three materials.</summary>
public class ShopRuleTests
{
    // 1000 kg of a 300 per tonne and b 400 per tonne, analyses without elements: 1 kg weighed is 1 kg of iron.
    private static ChargeProblem Two(ChargeMaterial? cheap = null, ChargeMaterial? dear = null) => new()
    {
        MeltKg = 1000,
        Materials = [cheap ?? Material("a", 300), dear ?? Material("b", 400)],
        Limits = [],
    };

    [Fact]
    public void Group_WithALeastMass_IsFilledByItsCheapestMember()
    {
        var plan = Plan(Two() with { Materials = [Material("a", 300), Material("b", 400), Material("c", 410)], Groups = [new() { Name = "dear", Codes = ["b", "c"], MinKg = 250 }] });

        Assert.Equal(250, Kg(plan, "b"), 1e-6);
        Assert.Equal(750 * 0.3 + 250 * 0.4, plan.TotalCost, 1e-6);
    }

    [Fact]
    public void Group_WithAGreatestMass_LeavesTheRestToOthers()
    {
        var plan = Plan(Two() with { Groups = [new() { Name = "cheap", Codes = ["a"], MaxKg = 250 }] });

        Assert.Equal(250, Kg(plan, "a"), 1e-6);
        Assert.Equal(250 * 0.3 + 750 * 0.4, plan.TotalCost, 1e-6);
    }

    [Fact]
    public void Group_WithAGreatestMassBelowWhatIsAskedOfItsMembers_IsInfeasible()
    {
        var plan = Plan(Two(cheap: Material("a", 300) with { MinKg = 300 }) with
        {
            Groups = [new() { Name = "dear", Codes = ["b"], MaxKg = 900 }, new() { Name = "cheap", Codes = ["a"], MaxKg = 250 }],
            Volumes = [new("wide", 100)],
        });

        Assert.Equal(PlanStatus.Infeasible, plan.Status);
        var conflict = Assert.Single(plan.Conflicts);
        Assert.Equal(("meltKg", null, 1000, null), (conflict.Quantity, conflict.Bound, conflict.Limit, conflict.Nearest)); // no melt of any mass can have both
        Assert.Equal(["cheap"], conflict.Groups); // the others can be spared
        Assert.Empty(conflict.Rooms);
        Assert.False(plan.MayConflictsBeFewer);
    }

    [Fact]
    public void Room_TooSmallForTheCharge_IsNamedAsWhatClashes()
    {
        var plan = Plan(Two() with
        {
            Materials = [Material("a", 300) with { BulkDensityTonnesPerM3 = 2 }],
            Groups = [new() { Name = "cheap", Codes = ["a"], MaxKg = 1500 }],
            Volumes = [new("wide", 1), new("narrow", 0.4)],
        });

        var conflict = Assert.Single(plan.Conflicts);
        Assert.Equal(["narrow"], conflict.Rooms); // 1000 kg take 0.5 m³
        Assert.Empty(conflict.Groups);
        Assert.Equal(800, conflict.Nearest!.Value, 1e-6);
    }

    [Fact]
    public void Group_OfWhichMoreIsWeighedInThanItsGreatestMass_StandsAndTakesNoMore()
    {
        var plan = Plan(Two() with
        {
            Materials = [Material("a", 300), Material("b", 400), Material("c", 900)],
            Groups = [new() { Name = "both", Codes = ["a", "b"], MaxKg = 500 }],
            WeighedKg = new Dictionary<string, double> { ["a"] = 300, ["b"] = 300 },
        });

        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.Equal(400, Kg(plan, "c"), 1e-6);
    }

    [Fact]
    public void Limit_WithAMargin_BindsThatFarInside()
    {
        var problem = Two(Material("a", 300, (Element.Si, 1)), Material("b", 400, (Element.Si, 2)));
        var least = Plan(problem with { Limits = [Limit(Element.Si, 1.5, 1.9, margin: 0.05)] }).Limits[0];
        var most = Plan(problem with { Materials = [problem.Materials[0] with { PricePerTonne = 500 }, problem.Materials[1]], Limits = [Limit(Element.Si, 1.5, 1.9, margin: 0.05)] }).Limits[0];

        Assert.Equal((1.55, BindingBound.Min), (Math.Round(least.Value, 9), least.Binding));
        Assert.Equal((1.85, BindingBound.Max), (Math.Round(most.Value, 9), most.Binding));
    }

    // The most that either gives is 2 %: 1.95 is inside of a least of 1.9, and no plan is 0.15 inside of it.
    [Fact]
    public void Limit_WhoseMarginCannotBeKept_ClashesWithItsMarginApart()
    {
        var problem = Two(Material("a", 300, (Element.Si, 1)), Material("b", 400, (Element.Si, 2)));
        var conflict = Assert.Single(Plan(problem with { Limits = [Limit(Element.Si, 1.9, null, margin: 0.15) with { HeldMargin = 0.2 }] }).Conflicts);

        Assert.Equal(("Si", "min", 1.9, 0.15, 0.2), (conflict.Quantity, conflict.Bound, conflict.Limit, conflict.Margin, conflict.HeldMargin));
        Assert.Equal(2, conflict.Nearest!.Value, 1e-6);
    }

    [Fact]
    public void Group_WithAGreatestShare_LeavesTheRestToOthers()
    {
        var plan = Plan(Two() with { Groups = [new() { Name = "cheap", Codes = ["a"], MaxPercent = 40 }] });

        Assert.Equal(400, Kg(plan, "a"), 1e-6);
        Assert.Equal(600, Kg(plan, "b"), 1e-6);
    }

    [Fact]
    public void Groups_WhoseLeastSharesSumToMoreThanAll_AreInfeasible()
    {
        var plan = Plan(Two() with { Groups = [new() { Name = "one", Codes = ["a"], MinPercent = 60 }, new() { Name = "two", Codes = ["b"], MinPercent = 60 }] });

        Assert.Equal(PlanStatus.Infeasible, plan.Status);
    }

    [Fact]
    public void Slag_PricedHighEnough_TurnsTheChoice()
    {
        // 10 % of slag at 2000 per tonne makes a cost 300 + 200 per tonne.
        var dirty = Two(cheap: Material("a", 300) with { SlagPercent = 10 });

        Assert.Equal(1000, Kg(Plan(dirty with { SlagCostPerTonne = 900 }), "a"), 1e-6);
        var clean = Plan(dirty with { SlagCostPerTonne = 2000 });
        Assert.Equal(1000, Kg(clean, "b"), 1e-6);
        Assert.Equal(400, clean.TotalCost, 1e-6);
    }

    [Fact]
    public void Energy_OfMelting_IsMoneyOfThePlan()
    {
        var plan = Plan(Two(cheap: Material("a", 300) with { MeltingKWhPerTonne = 550 }) with { EnergyPricePerKWh = 0.1 });

        Assert.Equal(355, plan.TotalCost, 1e-6);
        Assert.Equal(55, plan.Costs.Energy, 1e-6);
        Assert.Equal(300, plan.Costs.Materials, 1e-6);
    }

    [Fact]
    public void Bonus_ForUsingUp_SteersThePlanAndIsNoMoney()
    {
        var plan = Plan(Two(dear: Material("b", 400) with { UseUpBonusPerTonne = 150, AvailableKg = 200 }));

        Assert.Equal(200, Kg(plan, "b"), 1e-6);
        Assert.Equal(800 * 0.3 + 200 * 0.4, plan.TotalCost, 1e-6);
        Assert.Equal(30, plan.Costs.UseUpBonus, 1e-6);
    }

    [Fact]
    public void Room_ForTheColdCharge_TakesTheDenserMaterial()
    {
        // a at 0.5 t/m³ takes 2 m³ a tonne, b at 2 t/m³ takes 0.5: 1.25 m³ hold half a tonne of each.
        var problem = Two(Material("a", 300) with { BulkDensityTonnesPerM3 = 0.5 }, Material("b", 400) with { BulkDensityTonnesPerM3 = 2 }) with { Volumes = [new("bucket", 1.25)] };
        var plan = Plan(problem);

        Assert.Equal(500, Kg(plan, "a"), 1e-6);
        Assert.Equal(1.25, ChargeCheck.Of(problem, Charge(plan)).Volumes.Single().M3, 1e-9);
    }

    [Fact]
    public void Room_ForLessThanIsWeighedIn_StandsAndTakesNoMore()
    {
        // 300 kg of a take 0.6 m³, 400 kg of b 0.4 m³: both together are over the 0.9 m³. What is missing has to come without taking room.
        var problem = Two(Material("a", 300) with { BulkDensityTonnesPerM3 = 0.5 }, Material("b", 400) with { BulkDensityTonnesPerM3 = 1 });
        var plan = Plan(problem with
        {
            Materials = [.. problem.Materials, Material("c", 900)],
            Volumes = [new("bucket", 0.9)],
            WeighedKg = new Dictionary<string, double> { ["a"] = 300, ["b"] = 400 },
        });

        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.Equal((300.0, 400.0, 300.0), (Math.Round(Kg(plan, "a"), 6), Math.Round(Kg(plan, "b"), 6), Math.Round(Kg(plan, "c"), 6)));
    }

    [Fact]
    public void Room_OfAMaterialWithoutBulkDensity_NamesIt() =>
        Assert.Equal(["a"], ChargeCheck.Of(Two() with { Volumes = [new("bucket", 1)] }, new Dictionary<string, double> { ["a"] = 1000 }).Volumes.Single().NotCounted);

    [Theory]
    [InlineData(5, 1.5, 350)] // coming one point nearer to 2 % costs 100 per tonne and is worth 5: it stays at the limit
    [InlineData(150, 2, 400)]
    public void Nearness_ToTheAim_IsBoughtWhereItPays(double price, double silicon, double cost)
    {
        var problem = Two(Material("a", 300, (Element.Si, 1)), Material("b", 400, (Element.Si, 2))) with
        {
            Limits = [Limit(Element.Si, 1.5, 2) with { Nearness = new(2, price) }],
        };
        var plan = Plan(problem);

        Assert.Equal(silicon, plan.Analysis[Element.Si]!.Value, 1e-6);
        Assert.Equal(cost, plan.TotalCost, 1e-6);
        Assert.Equal(price * (2 - silicon), plan.Costs.Nearness, 1e-6);
    }

    [Fact]
    public void TwoLimits_OnOneQuantity_BothHold()
    {
        var plan = Plan(Two(Material("a", 300, (Element.Si, 1)), Material("b", 400, (Element.Si, 2))) with { Limits = [Limit(Element.Si, 1.2, null), Limit(Element.Si, 1.7, null)] });

        Assert.Equal(1.7, plan.Analysis[Element.Si]!.Value, 1e-6);
        Assert.Equal([BindingBound.None, BindingBound.Min], plan.Limits.Select(l => l.Binding));
    }

    [Fact]
    public void Scatter_AtTwoStandardDeviations_KeepsTheBoundThatFarAway()
    {
        // a scatters by 0.1 in Si, b does not: Si = 1 + b, deviation 0.1·a. The bound 1.5 holds for 1 + b − z·0.1·(1 − b) with
        // z = 2 (the confidence of two deviations, 97.724986805182 %), so b = (0.5 + 0.2)/(1 + 0.2).
        var plan = Plan(Two(Material("a", 300, (Element.Si, 1)).Scattering((Element.Si, 0.1)), Material("b", 400, (Element.Si, 2))) with
        {
            Limits = [Limit(Element.Si, 1.5, null)],
            ConfidencePercent = 97.724986805182,
        });

        Assert.Equal(1000 * 0.7 / 1.2, Kg(plan, "b"), 1e-4);
        Assert.Equal(0.1 * (1 - 0.7 / 1.2), plan.Limits[0].StandardDeviation, 1e-7);
    }

    [Theory]
    [InlineData("strange", 1)]
    [InlineData("a", -1)]
    [InlineData("a", double.NaN)]
    public void Problem_ThatMakesNoSense_IsRefused(string code, double kg) =>
        Assert.Throws<ArgumentException>(() => Plan(Two() with { WeighedKg = new Dictionary<string, double> { [code] = kg } }));

    private static ChargePlan Plan(ChargeProblem problem) => ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);

    private static double Kg(ChargePlan plan, string code) => plan.Materials.Single(m => m.Code == code).Kg;

    private static Dictionary<string, double> Charge(ChargePlan plan) => plan.Lines.ToDictionary(l => l.Code, l => l.Kg);
}
