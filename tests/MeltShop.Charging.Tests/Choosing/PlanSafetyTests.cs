using MeltShop.Charging.Choosing;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Choosing;

/// <summary>How far a charge of 1.4 % Si and 0.4 % deviation keeps from its limits; shares of the normal distribution as any table has them.</summary>
public class PlanSafetyTests
{
    [Fact]
    public void Window_WithTheValueNearerToOneBound_IsAsSafeAsThatBound()
    {
        // 0.4 above the lower bound: one deviation, and 80 % of half the window; the upper one is farther by both.
        var safety = Of(Limit(Element.Si, 1, 2));

        Assert.Equal(84.1345, safety.ConfidencePercent!.Value, 1e-4);
        Assert.Equal(80, safety.RoomPercent!.Value, 1e-9);
        Assert.Equal(69.1462, Of(Limit(Element.Si, 1, 2), Limit(Element.Si, 0.5, 1.6)).ConfidencePercent!.Value, 1e-4); // half a deviation
    }

    [Fact]
    public void OneBound_IsMeasuredByATenthOfIt()
    {
        Assert.Equal(400, Of(Limit(Element.Si, 1, null)).RoomPercent!.Value, 1e-9);
        Assert.Equal(300, Of(Limit(Element.Si, null, 2)).RoomPercent!.Value, 1e-9);
        Assert.Equal(-50, Of(Limit(Element.Si, null, 1.4 / 1.05)).RoomPercent!.Value, 1e-9); // outside by half of the tenth
    }

    [Fact]
    public void Limits_ThatLeaveOneValueOrNone_SayNothingOfRoom()
    {
        Assert.Null(Of(Limit(Element.Si, 1.4, 1.4)).RoomPercent);
        Assert.Null(Of(Limit(Element.Cr, 0, null)).RoomPercent);
        Assert.Equal(50, Of(Limit(Element.Si, 1.4, 1.4)).ConfidencePercent!.Value, 1e-9);
        Assert.Equal(new PlanSafety(null, null), Of());
    }

    [Fact]
    public void Charge_WithoutScatter_HasRoomAndNoConfidence() => Assert.Null(PlanSafety.Of([Limit(Element.Cr, null, 1)], Check(Limit(Element.Cr, null, 1))).ConfidencePercent);

    private static PlanSafety Of(params QuantityLimit[] limits) => PlanSafety.Of(limits, Check(limits));

    private static ChargeEvaluation Check(params QuantityLimit[] limits) => ChargeCheck.Of(
        new() { MeltKg = 1000, Limits = limits, Materials = [Material("a", 300, (Element.Si, 1)).Scattering((Element.Si, 2 / 3.0)), Material("b", 400, (Element.Si, 2))] },
        new Dictionary<string, double> { ["a"] = 600, ["b"] = 400 });
}
