using MeltShop.Charging.Choosing;
using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Choosing;

/// <summary>Plans to choose from, worked out by pencil: a holds 1 % of Si, b 2 %, 1000 kg at 1.5 to 1.7 %; the cheapest is half and half at 350.</summary>
public class PlanChoiceTests
{
    private static ChargeProblem Two(params ChargeMaterial[] more) => new()
    {
        MeltKg = 1000,
        Materials = [Material("a", 300, (Element.Si, 1)), Material("b", 400, (Element.Si, 2)), .. more],
        Limits = [Limit(Element.Si, 1.5, 1.7)],
    };

    [Fact]
    public void Cheapest_ComesFirstAndCostsNothingMore()
    {
        var choice = Of(Two());

        Assert.Equal([PlanKind.Cheapest, PlanKind.FewestMaterials, PlanKind.Safest], choice.Plans.Select(p => p.Kind));
        Assert.Equal(350, choice.Cheapest.TotalCost, 1e-6);
        Assert.Equal(350, choice.Cheapest.CostPerTonne, 1e-6);
        Assert.Equal(0, choice.Plans[0].ExtraCost!.Value, 1e-9);
        Assert.Equal(0, choice.Plans[0].Safety!.RoomPercent!.Value, 1e-4);
        Assert.Null(choice.Plans[0].Safety!.ConfidencePercent);
        Assert.Null(choice.Plans[0].Joint);
    }

    [Fact]
    public void Safest_WithoutScatter_KeepsAsFarFromTheBoundsAsThePriceAllows()
    {
        // 2 % of 350 are 7: 70 kg of a become b, so Si is 1.57, 70 % of the way from the bound to the middle.
        var safest = Plan(Of(Two()), PlanKind.Safest);

        Assert.Equal(PlanStatus.Optimal, safest.Status);
        Assert.InRange(safest.Safety!.RoomPercent!.Value, 70 - 0.01, 70 + 1e-4);
        Assert.InRange(safest.ExtraCost!.Value, 6.99, 7 + 1e-6);
    }

    [Fact]
    public void Safest_WhereThePriceAllowsTheMiddle_GoesNoFarther()
    {
        var safest = Plan(Of(Two(), new() { MostDearerPercent = 50 }), PlanKind.Safest);

        Assert.Equal(100, safest.Safety!.RoomPercent!.Value, 1e-4);
        Assert.Equal(10, safest.ExtraCost!.Value, 1e-4);
    }

    [Fact]
    public void Safest_WithScatter_BuysConfidence()
    {
        // Only b scatters, by 0.1 points: with 570 kg of it, Si is 1.57 ± 0.057, 0.07 / 0.057 = 1.22807 standard deviations above the bound: 89.0 %.
        var problem = Two() with { Materials = [Material("a", 300, (Element.Si, 1)), Material("b", 400, (Element.Si, 2)).Scattering((Element.Si, 0.1))] };

        var safest = Plan(Of(problem), PlanKind.Safest);

        Assert.InRange(Normal.Quantile(safest.Safety!.ConfidencePercent!.Value / 100), 1.22807 - 1e-4, 1.22807 + 1e-5);
        Assert.Equal(0.89 - 0.011, safest.Joint!.All, 0.01); // and 2.28 deviations below the upper bound: 1.1 % miss it
        Assert.Equal(50, Plan(Of(problem), PlanKind.Cheapest).Safety!.ConfidencePercent!.Value, 0.01);
    }

    [Fact]
    public void Safest_WhereEverySafetyIsTooDear_IsTheCheapest()
    {
        var safest = Plan(Of(Two(), new() { MostDearerPercent = 0 }), PlanKind.Safest);

        Assert.Equal(0, safest.ExtraCost!.Value, 1e-5);
        Assert.True(safest.Charge!.Holds);
    }

    [Fact]
    public void Safest_WithPieces_IsProvenWhereBranchAndBoundCallsOptimalWhatIsFarOutside()
    {
        // At one of its questions CBC 2.10 says so of a point with 3000 melts less than nothing of a steel.
        var problem = RandomYard.Charge(10, pieces: true, confidence: 80);
        var search = Search(problem);

        var safest = search.Found(PlanKind.Safest, formulation => SafestPlan.Find(formulation.Melt, Dearness.Of(search.Cheapest, 3), Budget()));

        Assert.Equal(PlanStatus.Optimal, safest.Status);
        Assert.InRange(Normal.Quantile(safest.Safety!.ConfidencePercent!.Value / 100), 3.3584, 3.3625);
    }

    [Fact]
    public void FewestMaterials_LeavesOutWhatSavesLittle()
    {
        // The cheap 250 kg of a are worth 0.25: with c alone in its place there are two materials.
        var problem = Two(Material("c", 301, (Element.Si, 1)));
        problem = problem with { Materials = [problem.Materials[0] with { AvailableKg = 250 }, .. problem.Materials.Skip(1)] };

        var choice = Of(problem);
        var fewest = Plan(choice, PlanKind.FewestMaterials);

        Assert.Equal(3, choice.Cheapest.Lines.Count);
        Assert.Equal(["b", "c"], fewest.Charge!.Lines.Select(l => l.Code));
        Assert.Equal(0.25, fewest.ExtraCost!.Value, 1e-5);
    }

    [Fact]
    public void FewestMaterials_WhereThatIsTooDear_KeepsTheMaterials()
    {
        var problem = Two(Material("c", 330, (Element.Si, 1)));
        problem = problem with { Materials = [problem.Materials[0] with { AvailableKg = 250 }, .. problem.Materials.Skip(1)] };

        // c in the place of 250 kg of a costs 7.5 more than 357.5, over 2 %.
        Assert.Equal(3, Plan(Of(problem), PlanKind.FewestMaterials).Charge!.Lines.Count);
    }

    [Fact]
    public void MostReturns_FillUpToThePrice()
    {
        // Returns of 1.6 % at 420 take the place of a and b that cost 360: 7 more pay for 116.67 kg.
        var returns = Plan(Of(Two(Material("returns", 420, (Element.Si, 1.6))), new() { Returns = ["returns"] }), PlanKind.MostReturns);

        Assert.Equal(7000.0 / 60, Kg(returns, "returns"), 1e-4);
        Assert.Equal(7, returns.ExtraCost!.Value, 1e-6);
    }

    [Fact]
    public void MostReturns_WhoseCostIsTheSame_AreTheCheapestOfThose()
    {
        // The returns are short: 50 kg at most. The rest is as cheap as it can be, and nothing is spent on the price's account.
        var returns = Plan(Of(Two(Material("returns", 420, (Element.Si, 1.6)) with { AvailableKg = 50 }), new() { Returns = ["returns"] }), PlanKind.MostReturns);

        Assert.Equal(50, Kg(returns, "returns"), 1e-6);
        Assert.Equal(3, returns.ExtraCost!.Value, 1e-5);
    }

    [Theory]
    [InlineData(3, 7, 300, 700)] // 1.7 %: as it was
    [InlineData(40, 160, 300, 700)] // 1.8 % was too much
    [InlineData(90, 10, 500, 500)] // 1.1 % was too little
    public void AsLastTime_IsTheNearestThatHolds(double aLast, double bLast, double aKg, double bKg)
    {
        var plan = Plan(Of(Two(), new() { LastTimeKg = new Dictionary<string, double> { ["a"] = aLast, ["b"] = bLast } }), PlanKind.AsLastTime);

        Assert.Equal(aKg, Kg(plan, "a"), 1e-4);
        Assert.Equal(bKg, Kg(plan, "b"), 1e-4);
    }

    [Fact]
    public void AsLastTime_WithAMaterialThatIsGone_NamesItAndFillsItsPlace()
    {
        var choice = Of(Two(), new() { LastTimeKg = new Dictionary<string, double> { ["a"] = 400, ["pig"] = 100, ["b"] = 500 } });

        Assert.Equal(["pig"], choice.Gone);
        // Of the 100 kg to fill, a costs less and Si has 100 kg·% to spare: a 500, b 500, cheapest among the nearest.
        Assert.Equal(500, Kg(Plan(choice, PlanKind.AsLastTime), "a"), 1e-4);
    }

    [Theory]
    [InlineData(0, 0.051)] // the nearest: a few grams of alloy
    [InlineData(0.06, 0)] // that nobody weighs: some b in the place of a does it too
    public void AsLastTime_ThatATraceWouldTrim_DoesWithoutItWhereItIsTooLittleToWeigh(double leastKg, double alloyKg)
    {
        // Last time 505 a to 495 b: 1000 kg of that hold 14.95 kg of Si, 0.05 too little: 0.051 kg of an alloy of 99 %, or 5 kg of b for a.
        var plan = Plan(Of(Two(Material("alloy", 5000, (Element.Si, 99))), new() { LastTimeKg = new Dictionary<string, double> { ["a"] = 505, ["b"] = 495 }, LeastKg = leastKg }), PlanKind.AsLastTime);

        Assert.True(plan.Charge!.Holds);
        Assert.Equal(alloyKg, Kg(plan, "alloy"), 0.001);
    }

    [Fact]
    public void AsLastTime_ThatOnlyATraceCanKeepInside_KeepsTheTrace()
    {
        // Without the alloy no charge of a, of which nothing else is there, holds 1.05 % of Si.
        var problem = new ChargeProblem { MeltKg = 1000, Materials = [Material("a", 300, (Element.Si, 1)), Material("alloy", 5000, (Element.Si, 99))], Limits = [Limit(Element.Si, 1.05, 1.7)] };

        var plan = Plan(Of(problem, new() { LastTimeKg = new Dictionary<string, double> { ["a"] = 1 }, LeastKg = 2 }), PlanKind.AsLastTime);

        Assert.Equal(0.5102, Kg(plan, "alloy"), 1e-3); // 0.5 kg of Si of 98 points
    }

    [Fact]
    public void WeighedAlready_IsInEveryPlan()
    {
        var choice = Of(Two(Material("c", 900, (Element.Si, 1.6))) with { WeighedKg = new Dictionary<string, double> { ["c"] = 80 } });

        Assert.All(choice.Plans, p => Assert.True(Kg(p, "c") >= 80 - 1e-6));
    }

    [Fact]
    public void Impossible_HasNoPlansAndSaysWhatClashes()
    {
        var choice = Of(Two() with { Limits = [Limit(Element.Si, 2.5, 3)] });

        Assert.Empty(choice.Plans);
        Assert.Equal("Si", Assert.Single(choice.Cheapest.Conflicts).Quantity);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Wish_ThatIsNoNumberOrBelowZero_IsRefused(double number)
    {
        Assert.Throws<ArgumentException>(() => Of(Two(), new() { MostDearerPercent = number }));
        Assert.Throws<ArgumentException>(() => Of(Two(), new() { LeastKg = number }));
        Assert.Throws<ArgumentException>(() => Of(Two(), new() { LastTimeKg = new Dictionary<string, double> { ["a"] = 1, ["b"] = number } }));
    }

    [Fact]
    public void Search_ThatFails_LosesNoOtherPlan()
    {
        var search = Search(Two());

        var failed = search.Found(PlanKind.Safest, _ => throw new InvalidOperationException("a fault of this room"));
        var missing = search.Found(PlanKind.FewestMaterials, _ => Solution.Without(PlanStatus.Optimal) with { Values = [0.6, 0.4] }); // 1.4 % of Si

        Assert.Equal((PlanKind.Safest, null), (failed.Kind, failed.Charge));
        Assert.Equal("a fault of this room", failed.Fault);
        Assert.Null(missing.Charge);
        Assert.Contains("does not hold", missing.Fault, StringComparison.Ordinal);
        Assert.Null(search.TheCheapest().Fault);
    }

    [Fact]
    public void Search_ThatIsStopped_IsNoFault() =>
        Assert.Throws<OperationCanceledException>(() => Search(Two()).Found(PlanKind.Safest, _ => throw new OperationCanceledException()));

    private static PlanSearch Search(ChargeProblem problem)
    {
        var formulation = new MeltFormulation(ChargeOptimiser.MeltOf(problem));
        var (plan, kilograms) = MeltPlanner.Solve(formulation, Budget());
        return new(problem, formulation, plan, kilograms, LeastKg: 0);
    }

    [Fact]
    public void Pieces_StayWholeInEveryPlan()
    {
        var problem = Two() with
        {
            MeltToleranceKg = 100,
            Materials = [Material("a", 300, (Element.Si, 1)) with { PieceKg = 130 }, Material("b", 400, (Element.Si, 2)), Material("r", 380, (Element.Si, 1.6)) with { PieceKg = 70 }],
        };

        var choice = Of(problem, new() { Returns = ["r"], LastTimeKg = new Dictionary<string, double> { ["a"] = 1, ["b"] = 1 } });

        Assert.Equal(5, choice.Plans.Count);
        Assert.All(choice.Plans, p => Assert.True(p.Charge!.Holds));
        Assert.All(choice.Plans, p => Assert.Equal(0, Math.Abs(Kg(p, "a") / 130 - Math.Round(Kg(p, "a") / 130)), 1e-6));
    }

    private static ChoiceOfPlans Of(ChargeProblem problem, ChoiceWishes? wishes = null) => PlanChoice.Of(problem, wishes ?? new(), TestContext.Current.CancellationToken);

    private static Budget Budget() => new(TimeSpan.FromMinutes(5), TestContext.Current.CancellationToken);

    private static PlanToChoose Plan(ChoiceOfPlans choice, PlanKind kind) => Assert.Single(choice.Plans, p => p.Kind == kind);

    private static double Kg(PlanToChoose plan, string code) => plan.Charge!.Lines.Where(l => l.Code == code).Sum(l => l.Kg);
}
