using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Contract;

/// <summary>Corners of the charge calculation, each worked by hand.</summary>
public class ChargeEdgeTests
{
    private static readonly ChargeMaterial Pig = Material("pig", 500, (Element.C, 4));
    private static readonly ChargeMaterial Steel = Material("steel", 300);

    [Fact]
    public void Stock_BelowTheMelt_NamesTheMassThatCanBeReached()
    {
        var plan = Plan(new() { MeltKg = 1000, Materials = [Pig with { AvailableKg = 200 }, Steel with { AvailableKg = 300 }], Limits = [] });

        Assert.Equal(PlanStatus.Infeasible, plan.Status);
        var conflict = Assert.Single(plan.Conflicts);
        Assert.Equal(("meltKg", null, 1000.0), (conflict.Quantity, conflict.Bound, conflict.Limit!.Value));
        Assert.Equal(500, conflict.Nearest!.Value, 1e-6);
    }

    [Fact]
    public void Infeasible_HeelNotMeasured_NamesWhatWasAssumed()
    {
        var plan = Plan(new()
        {
            MeltKg = 1000, Heel = Metal.Of(500, Analysis.Of((Element.C, 3))), Materials = [Steel],
            Limits = [new(Metallurgy.Quantities.LinearQuantity.Of(Element.Si), 1, null)],
        });

        Assert.Equal(PlanStatus.Infeasible, plan.Status);
        Assert.Equal([Element.Si], plan.AssumedZero);
    }

    [Theory]
    [InlineData(51)]
    [InlineData(60)]
    [InlineData(95)]
    public void OneValueOnly_UnderConfidence_IsMetByWhatDoesNotScatter(double confidence)
    {
        var cheap = Material("cheap", 100, (Element.C, 4)) with { SpreadPercent = new Dictionary<Element, double> { [Element.C] = 0.1 } };
        var plan = Plan(new()
        {
            MeltKg = 1000, Materials = [cheap, Pig, Steel], ConfidencePercent = confidence,
            Limits = [new(Metallurgy.Quantities.LinearQuantity.Of(Element.C), 2, 2)],
        });

        Assert.Equal([("pig", 500.0), ("steel", 500.0)], plan.Lines.Select(l => (l.Code, Math.Round(l.Kg, 6))));
        Assert.Null(plan.Materials[0].PriceToEnterPerTonne);
    }

    [Theory]
    [InlineData(50.1)]
    [InlineData(60)]
    [InlineData(80)]
    public void OneValueOnly_InAFullYard_IsFoundAtEveryConfidence(double confidence)
    {
        // Sulphur at one value: two cones that touch in a point were taken for a clash at some confidences.
        var problem = RandomYard.Charge(186637, confidence: 80) with { ConfidencePercent = confidence };
        var certain = problem with { Materials = [.. problem.Materials.Where(m => m.SpreadPercent.GetValueOrDefault(Element.S) == 0)] };

        Assert.Equal(PlanStatus.Optimal, Plan(problem).Status);
        Assert.Equal(Plan(certain).TotalCost, Plan(problem).TotalCost, 1e-5);
    }

    [Fact]
    public void Shares_ThatCannotSum_LeaveNoMassAtAll()
    {
        var plan = Plan(new() { MeltKg = 1000, Materials = [Pig with { MaxPercent = 40 }, Steel with { MaxPercent = 40 }], Limits = [] });

        var conflict = Assert.Single(plan.Conflicts);
        Assert.Equal(("meltKg", null, 1000, null), (conflict.Quantity, conflict.Bound, conflict.Limit, conflict.Nearest));
        Assert.Empty(conflict.Groups);
    }

    [Fact]
    public void CompulsoryMass_AboveTheMelt_NamesTheMassThatItMakes()
    {
        var plan = Plan(new() { MeltKg = 1000, Materials = [Pig with { MinKg = 1200 }, Steel], Limits = [] });

        Assert.Equal(1200, Assert.Single(plan.Conflicts).Nearest!.Value, 1e-6);
    }

    [Fact]
    public void MinimumShare_OfTheDearMaterial_IsKept()
    {
        var plan = Plan(new() { MeltKg = 1000, Heel = Metal.Of(500, Analysis.Of((Element.C, 3))), Materials = [Pig with { MinPercent = 20 }, Steel], Limits = [] });

        Assert.Equal([("pig", 20.0), ("steel", 80.0)], plan.Lines.Select(l => (l.Code, Math.Round(l.Percent, 9))));
        Assert.Equal(100 * 0.5 + 400 * 0.3, plan.TotalCost, 1e-9);
        Assert.Equal(1000 * plan.TotalCost / 500, plan.CostPerTonne, 1e-9);
    }

    [Fact]
    public void ExactLimit_ThatNothingCanRaise_HasNoMarginalCost()
    {
        var plan = Plan(new() { MeltKg = 1000, Materials = [Pig], Limits = [Limit(Element.C, 4, 4)] });

        Assert.Equal(BindingBound.Both, plan.Limits[0].Binding);
        Assert.Null(plan.Limits[0].MarginalCost);
    }

    [Fact]
    public void TwoLimitsOnOneQuantity_OfWhichOneIsTighter_PriceTheTighterOne()
    {
        var plan = Plan(new() { MeltKg = 1000, Materials = [Pig, Steel], Limits = [Limit(Element.C, 1, null), Limit(Element.C, 2, 3)] });

        // Half pig: a hundredth of a point is 2.5 kg of pig for steel, at 0.2 a kilogram.
        Assert.Equal(BindingBound.None, plan.Limits[0].Binding);
        Assert.Equal(0, plan.Limits[0].MarginalCost);
        Assert.Equal(BindingBound.Min, plan.Limits[1].Binding);
        Assert.Equal(0.5, plan.Limits[1].MarginalCost!.Value, 1e-9);
    }

    [Fact]
    public void FreeLiquidMass_WithACheapMaterial_StaysAtTheLeast()
    {
        var plan = Plan(new() { MeltKg = 1000, MeltToleranceKg = 100, Materials = [Pig, Steel], Limits = [Limit(Element.C, 2, null)] });

        Assert.Equal(1000, plan.LiquidKg, 1e-9);
        Assert.Equal(0.5, plan.Limits[0].MarginalCost!.Value, 1e-9);
    }

    [Theory]
    [InlineData(1e6)]
    [InlineData(1e9)]
    [InlineData(1e12)]
    public void Tolerance_BesideWhichTheMeltIsNothing_StillAsksForTheMelt(double toleranceKg)
    {
        ChargeMaterial carbon = Material("carburiser", 900, (Element.C, 98.5)), silicon = Material("ferrosilicon", 1600, (Element.Si, 75));
        var problem = new ChargeProblem
        {
            MeltKg = 1000, Heel = Metal.Of(100, Analysis.Of((Element.C, 3.6), (Element.Si, 1.9))), Materials = [Steel, Pig, carbon, silicon],
            Limits = [Limit(Element.C, 3.4, 3.6), Limit(Element.Si, 1.8, 2.1)],
        };
        var least = Plan(problem);
        var plan = Plan(problem with { MeltToleranceKg = toleranceKg });

        Assert.Equal((PlanStatus.Optimal, 1000.0, Math.Round(least.TotalCost, 3)), (plan.Status, Math.Round(plan.LiquidKg, 3), Math.Round(plan.TotalCost, 3)));

        // What pays for itself comes as far as the melt may grow.
        var paid = Plan(problem with { MeltToleranceKg = toleranceKg, Materials = [Pig with { PricePerTonne = -1 }], Limits = [] });
        Assert.Equal((PlanStatus.Optimal, 1.0), (paid.Status, Math.Round(paid.LiquidKg / (1000 + toleranceKg), 6)));
    }

    [Fact]
    public void HeelWithoutAMeasuredElement_ThatALimitAsksFor_IsNamed()
    {
        var problem = new ChargeProblem
        {
            MeltKg = 1000,
            Heel = Metal.Of(100, Analysis.Of((Element.C, 3))),
            Materials = [Pig, Steel],
            Limits = [Limit(Element.C, 2, null), Limit("Mn + Cr", null, 1, (Element.Mn, 1), (Element.Cr, 1))],
        };

        Assert.Equal([Element.Mn, Element.Cr], Plan(problem).AssumedZero);
        Assert.Empty(Plan(problem with { Heel = Metal.None }).AssumedZero);
    }

    [Fact]
    public void PriceBelowZero_OfWhatBringsNoMetal_HasNoCheapestCharge()
    {
        var plan = Plan(new() { MeltKg = 1000, Materials = [Steel, Dross(-10)], Limits = [] });

        Assert.Equal((PlanStatus.TimeLimit, SearchEnd.Endless), (plan.Status, plan.End));
        Assert.Equal(["dross"], plan.Endless);
        Assert.Empty(plan.Lines);
    }

    [Fact]
    public void PriceBelowZero_OfWhatBringsNoMetal_GoesToItsBound()
    {
        Assert.Equal(250, Kg(Plan(new() { MeltKg = 1000, Materials = [Steel, Dross(-10) with { AvailableKg = 250 }], Limits = [] }), "dross"), 1e-6);
        Assert.Equal(250, Kg(Plan(new() { MeltKg = 1000, Materials = [Steel, Dross(-10) with { MaxPercent = 20 }], Limits = [] }), "dross"), 1e-6);
        // A stock above what the program reckons with by itself is a bound all the same.
        Assert.Equal(2e6, Kg(Plan(new() { MeltKg = 1000, Materials = [Steel, Dross(-10) with { AvailableKg = 2e6 }], Limits = [] }), "dross"), 1e-3);
    }

    [Fact]
    public void PriceOfZero_OfWhatBringsNoMetal_ComesInAsFarAsItIsOfUse()
    {
        Assert.Equal(0, Kg(Plan(new() { MeltKg = 1000, Materials = [Dross(0), Steel], Limits = [] }), "dross"), 1e-6);
        // Steel alone is cheapest, and of a charge of which it may be 40 % the rest has to be something.
        var plan = Plan(new() { MeltKg = 1000, Materials = [Dross(0), Pig with { MaxPercent = 40 }, Steel with { MaxPercent = 40 }], Limits = [] });
        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.Equal(1500, Kg(plan, "dross"), 1e-3);
    }

    private static ChargeMaterial Dross(double price) => Material("dross", price, (Element.Parse("Zn"), 100)).Yielding(50, (Element.Parse("Zn"), 0));

    private static double Kg(ChargePlan plan, string code) => plan.Lines.Where(l => l.Code == code).Sum(l => l.Kg);

    [Fact]
    public void HeelThatIsTheWholeMelt_InsideItsLimits_NeedsNothing()
    {
        var plan = Plan(new() { MeltKg = 1000, Heel = Metal.Of(1000, Analysis.Of((Element.C, 3))), Materials = [Pig, Steel], Limits = [Limit(Element.C, 2.9, 3.1)] });

        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.Empty(plan.Lines);
        Assert.Equal(0, plan.CostPerTonne);
    }

    [Fact]
    public void PieceMass_OfWhichNoMultipleFits_IsImpossible()
    {
        var plan = Plan(new() { MeltKg = 1000, Materials = [Steel with { PieceKg = 300 }], Limits = [] });

        Assert.Equal(PlanStatus.Infeasible, plan.Status);
        Assert.Equal(900, Assert.Single(plan.Conflicts).Nearest!.Value, 1e-6);
    }

    [Fact]
    public void Material_ThatIsInThePlan_HasItsOwnPriceToEnter()
    {
        var plan = Plan(new()
        {
            MeltKg = 1000,
            Materials = [Pig with { MinKg = 100 }, Steel with { AvailableKg = 300 }, Material("scrap", 310), Pig with { Code = "dear", PricePerTonne = 600 }, Steel with { Code = "none", AvailableKg = 0 }],
            Limits = [],
        });

        Assert.Equal([500.0, 300.0, 310.0, 310.0, null], plan.Materials.Select(m => m.PriceToEnterPerTonne is { } price ? Math.Round(price, 9) : (double?)null));
    }

    [Fact]
    public void CancelledCall_BeforeItStarts_Stops()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();

        Assert.Throws<OperationCanceledException>(() => ChargeOptimiser.Plan(new() { MeltKg = 1000, Materials = [Steel], Limits = [] }, source.Token));
    }

    private static ChargePlan Plan(ChargeProblem problem) => ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);
}
