using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;
using MeltShop.Metallurgy.Tests.Treatment;

namespace MeltShop.Metallurgy.Tests.Route;

public class RouteEdges
{
    private static readonly RouteAddition Ferrosilicon = new(
        new() { Analysis = Analysis.Of((Element.Si, 75)), RecoveryPercent = new Dictionary<Element, double> { [Element.Si] = 90 } }, 0.4);

    [Fact]
    public void Bounds_OnTheTolerance_StillHold()
    {
        Assert.True(new Bounds(Least: 0).Hold(-Bounds.Tolerance));
        Assert.True(new Bounds(Most: 0).Hold(Bounds.Tolerance));
        Assert.Equal(new Bounds(4, 6, 8), new Bounds(1, 2, 3).Scaled(-2, 10));
        Assert.Equal(new Bounds(12, 14, 16), new Bounds(1, 2, 3).Scaled(2, 10));
    }

    [Fact]
    public void For_MostThatTheRouteJustBrings_IsNoFault()
    {
        // Exactly what 0.4 % of the ferrosilicon brings: 0.27 of 100.37 kg.
        var brought = new PouringRoute(null, [Ferrosilicon]).Poured(Metal.Of(1, Analysis.Empty))!.Percent(Element.Si);
        var window = FurnaceWindow.For(new(null, [Ferrosilicon]), [new(LinearQuantity.Of(Element.Si), new(Most: brought))]);

        Assert.Empty(window.Findings);
        Law.Near(0, window.Rows[0].Bounds.Most!.Value);
    }

    [Fact]
    public void For_BareRoute_LeavesTheWindowAsItIs()
    {
        var window = FurnaceWindow.For(new(null, []), [
            new(LinearQuantity.Of(Element.Si), new(0, 2, 3)), new(ManganeseBalance.Quantity, new(Most: -0.1)),
        ]);

        Assert.Empty(window.Findings);
        Assert.Equal(new Bounds(null, 2, 3), window.Rows[0].Bounds);
        Assert.Equal(-0.1, window.Rows[1].Bounds.Most);
    }

    [Fact]
    public void Poured_AlloyThatCannot_IsNothingEvenWithInoculant()
    {
        var recipe = TreatmentCases.Printed().Recipe with { MgRecoveryPercent = 0 };

        Assert.Null(new PouringRoute(new(recipe, 1450, 0.045, 5, 0.015), [Ferrosilicon]).Poured(Metal.Of(1000, Analysis.Empty)));
    }

    [Fact]
    public void Poured_CoverSteel_DilutesTheCarbonOfTreatedIron()
    {
        var recipe = TreatmentCases.Printed().Recipe;
        var iron = Metal.Of(1000, Analysis.Of((Element.C, 3.60), (Element.S, 0.015)));
        var steel = new RouteAddition(new() { Analysis = Analysis.Empty }, 1);
        var bare = new PouringRoute(new(recipe, 1450, 0.045, 5, 0.015), []).Poured(iron)!;
        var covered = new PouringRoute(new(recipe, 1450, 0.045, 5, 0.015, steel), []).Poured(iron)!;

        // By hand: one percent of steel takes carbon down by 0.036 × the same dilution by alloy.
        Law.Near(bare.Percent(Element.C) / 1.01, covered.Percent(Element.C), 0.001);
    }

    [Fact]
    public void LiquidusTemperature_OwnLine_IsUsed()
    {
        LiquidusCalibration own = new(1600, 100, 2, 12);

        Assert.Equal(4.0, MonotoneLimits.LiquidusTemperature(new(Least: 1200), own).Bounds.Most!.Value, 12);
    }
}
