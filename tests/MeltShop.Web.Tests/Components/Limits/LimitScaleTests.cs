using MeltShop.Web.Components.Limits;

namespace MeltShop.Web.Tests.Components.Limits;

public sealed class LimitScaleTests
{
    [Fact]
    public void At_WindowOfTwoLimits_LiesInTheMiddleHalf()
    {
        var scale = new LimitScale(3.5, null, 3.7, 3.6);

        Assert.Equal(25, scale.At(3.5), 6);
        Assert.Equal(75, scale.At(3.7), 6);
        Assert.Equal(50, scale.At(3.6), 6);
    }

    [Theory]
    [InlineData(9.0)]
    [InlineData(-2.0)]
    public void At_ValueFarOutside_StaysOnTheBarAndOutsideTheWindow(double value)
    {
        var scale = new LimitScale(3.5, 3.6, 3.7, value);

        Assert.InRange(scale.At(value), 0.1, 99.9);
        Assert.True(value > 3.7 ? scale.At(value) > scale.End(3.7) : scale.At(value) < scale.Start(3.5));
    }

    [Fact]
    public void Start_OpenSide_IsTheEndOfTheBar()
    {
        var scale = new LimitScale(null, null, 0.08, 0.02);

        Assert.Equal(0, scale.Start(null));
        Assert.InRange(scale.At(0.08), 1, 99);
    }
}
