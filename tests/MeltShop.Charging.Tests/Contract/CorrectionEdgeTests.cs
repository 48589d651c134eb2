using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Contract;

/// <summary>Corners of the bath correction, each worked by hand.</summary>
public class CorrectionEdgeTests
{
    private static readonly CorrectionProblem OverCarbon = new()
    {
        Bath = Metal.Of(3000, Analysis.Of((Element.C, 3.6))),
        TemperatureC = 1450,
        Additions = [Material("steel", 300)],
        Limits = [Limit(Element.C, null, 3.4)],
    };

    [Fact]
    public void BathInsideItsLimits_NeedsNothing()
    {
        var plan = Plan(OverCarbon with { Limits = [Limit(Element.C, 3.5, 3.7)] });

        Assert.Equal(PlanStatus.Optimal, plan.Plan.Status);
        Assert.Empty(plan.Plan.Lines);
        Assert.Equal((0.0, 0.0, 0.0), (plan.Plan.TotalCost, plan.TapOffKg, plan.TemperatureDropC!.Value));
        Assert.Equal(3000, plan.Plan.LiquidKg);
    }

    [Fact]
    public void FullFurnace_TooMuchCarbon_IsTappedOffFirst()
    {
        var plan = Plan(OverCarbon with { CapacityKg = 3000, MaxTapOffKg = 500, TapOffCostPerTonne = 20 });

        // What is tapped off is filled up with steel: (3000 − t) × 3.6 = 3000 × 3.4.
        var tapped = 3000 * 0.2 / 3.6;
        Assert.Equal(tapped, plan.TapOffKg, 1e-6);
        Assert.Equal(tapped, plan.Plan.Lines.Single().Kg, 1e-6);
        Assert.Equal(tapped * 0.32, plan.Plan.TotalCost, 1e-6);
        Assert.Equal(1000 * tapped * 0.32 / 3000, plan.Plan.CostPerTonne, 1e-6);
        Assert.Equal(tapped * 341 / (0.23 * 3000), plan.TemperatureDropC!.Value, 1e-6);
    }

    [Fact]
    public void FullFurnace_WithoutTapping_ClashesWithTheCarbonLimit()
    {
        var conflict = Assert.Single(Plan(OverCarbon with { CapacityKg = 3000 }).Plan.Conflicts);

        Assert.Equal(("C", "max", 3.4), (conflict.Quantity, conflict.Bound, conflict.Limit!.Value));
        Assert.Equal(3.6, conflict.Nearest!.Value, 1e-9);
    }

    [Fact]
    public void MostAddition_BelowWhatIsNeeded_SaysHowNearItGets()
    {
        var conflict = Assert.Single(Plan(OverCarbon with { MaxAdditionKg = 100 }).Plan.Conflicts);

        Assert.Equal(3.6 * 3000 / 3100, conflict.Nearest!.Value, 1e-9);
    }

    [Fact]
    public void Margin_OnALimit_EndsThatFarInside()
    {
        var plan = Plan(OverCarbon with { Limits = [Limit(Element.C, 3.2, 3.4, margin: 0.05)] });

        Assert.Equal(3.35, plan.Plan.Limits[0].Value, 1e-9);
        Assert.Equal((3.2, 3.4, BindingBound.Max), (plan.Plan.Limits[0].Min!.Value, plan.Plan.Limits[0].Max!.Value, plan.Plan.Limits[0].Binding));
        // x = 3000 × 3.6/b − 3000: dx/db = −3000 × 3.6/b², at 0.3 a kilogram.
        Assert.Equal(-0.01 * 0.3 * 3000 * 3.6 / (3.35 * 3.35), plan.Plan.Limits[0].MarginalCost!.Value, 1e-9);
    }

    [Fact]
    public void CapacityBelowTheBath_ClashesByItself()
    {
        var conflict = Assert.Single(Plan(OverCarbon with { CapacityKg = 2900 }).Plan.Conflicts);

        Assert.Equal(("meltKg", 2900.0), (conflict.Quantity, conflict.Limit!.Value));
        Assert.Equal(3000, conflict.Nearest!.Value, 1e-6);
    }

    [Fact]
    public void TappingOff_AllOfTheBath_CorrectsNothing()
    {
        // Steel brings no carbon up, and an empty furnace holds none.
        var problem = OverCarbon with { MaxTapOffKg = 5000, TapOffCostPerTonne = 1, Limits = [Limit(Element.C, 3.7, 3.8)] };
        var conflict = Assert.Single(Plan(problem).Plan.Conflicts);

        Assert.Equal(("C", "min"), (conflict.Quantity, conflict.Bound));
        Assert.Equal(3.6, conflict.Nearest!.Value, 1e-6);
    }

    [Fact]
    public void TappingOff_NearlyAll_IsAPlanWhereItHelps()
    {
        // One kilogram of carbon lifts no more than some 960 kg from 3.6 to 3.7 %: (b × 3.6 + 100) = (b + 1) × 3.7.
        var problem = OverCarbon with
        {
            Additions = [Material("carburiser", 900, (Element.C, 100))], MaxAdditionKg = 1, MaxTapOffKg = 3000, TapOffCostPerTonne = 1, Limits = [Limit(Element.C, 3.7, 3.8)],
        };
        var plan = Plan(problem);

        Assert.Equal(PlanStatus.Optimal, plan.Plan.Status);
        Assert.Equal(3.7, plan.Plan.Limits[0].Value, 1e-9);
        Assert.InRange(plan.TapOffKg, 3000 - 963 - 1e-6, 2997 + 1e-6);
    }

    private static CorrectionPlan Plan(CorrectionProblem problem) => CorrectionOptimiser.Plan(problem, TestContext.Current.CancellationToken);
}
