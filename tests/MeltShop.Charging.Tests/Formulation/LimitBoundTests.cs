using MeltShop.Charging.Formulation;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Formulation;

/// <summary>A bound as it is asked for, as it has to be kept, and the measure of missing it.</summary>
public class LimitBoundTests
{
    [Fact]
    public void Window_WithAMargin_IsTwoBoundsThatStandInside()
    {
        var bounds = LimitBound.Of([Limit(Element.C, 3.5, null), Limit(Element.Si, 2.0, 2.6, margin: 0.05), Limit(Element.Mn, null, 0.4)]);

        Assert.Equal([(0, false), (1, false), (1, true), (2, true)], bounds.Select(b => (b.LimitIndex, b.IsMax)));
        Assert.Equal([3.5, 2.0, 2.6, 0.4], bounds.Select(b => b.Asked));
        Assert.Equal([3.5, 2.05, 2.55, 0.4], bounds.Select(b => Math.Round(b.Kept, 12)));
        Assert.Equal(["limit 1, C min", "limit 2, Si min", "limit 2, Si max", "limit 3, Mn max"], bounds.Select(b => b.RowName));
    }

    [Fact]
    public void HalfWindow_OfOneBoundOrNoWidth_IsATenthOfTheBound()
    {
        var bounds = LimitBound.Of([Limit(Element.Si, 2.0, 2.6), Limit(Element.C, 3.5, null), Limit(Element.Mn, 0.4, 0.4), Limit("less", -2, null, (Element.C, 1))]);

        Assert.Equal([0.3, 0.3, 0.35, 0.04, 0.04, 0.2], bounds.Select(b => Math.Round(b.HalfWindow, 12)));
    }

    [Fact]
    public void Bounds_ThatSayTheSame_AreTwo()
    {
        var bounds = LimitBound.Of([Limit(Element.Si, 2.0, null)]).Concat(LimitBound.Of([Limit(Element.Si, 2.0, null)])).ToList();

        Assert.NotEqual(bounds[0], bounds[1]);
        Assert.Equal(2, bounds.ToHashSet().Count);
        Assert.Equal(bounds[0], bounds[0]);
    }
}
