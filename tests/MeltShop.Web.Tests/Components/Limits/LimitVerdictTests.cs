using MeltShop.Web.Components.Limits;

namespace MeltShop.Web.Tests.Components.Limits;

public sealed class LimitVerdictTests
{
    [Theory]
    [InlineData(0.30, 0.20, 0.40, 0, LimitVerdict.In)]
    [InlineData(0.40, 0.20, 0.40, 0, LimitVerdict.In)]
    [InlineData(0.4000005, 0.20, 0.40, 0, LimitVerdict.In)]
    [InlineData(0.40001, 0.20, 0.40, 0, LimitVerdict.High)]
    [InlineData(0.19, 0.20, 0.40, 0, LimitVerdict.Low)]
    [InlineData(0.39, 0.20, 0.40, 0.02, LimitVerdict.Close)]
    [InlineData(0.41, 0.20, 0.40, 0.02, LimitVerdict.Close)]
    [InlineData(0.43, 0.20, 0.40, 0.02, LimitVerdict.High)]
    [InlineData(0.30, 0.20, 0.40, 0.02, LimitVerdict.In)]
    public void Of_ValueAndWindow_Judges(double value, double least, double most, double doubt, LimitVerdict verdict) =>
        Assert.Equal(verdict, LimitVerdicts.Of(value, least, most, doubt));

    [Fact]
    public void Of_NotMeasured_IsUnknownAndNotZero() => Assert.Equal(LimitVerdict.Unknown, LimitVerdicts.Of(null, null, 0.4));

    [Fact]
    public void Of_OpenSide_DoesNotLimit() => Assert.Equal(LimitVerdict.In, LimitVerdicts.Of(12, 0.2, null));
}
