using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Tests.Quantities;

public class LiquidusTests
{
    // Source: R. W. Heine, The Fe-C-Si Solidification Diagram for Cast Irons, AFS Transactions, 1986, table of liquidus pairs.
    [Theory]
    [Printed("R. W. Heine, The Fe-C-Si Solidification Diagram for Cast Irons, AFS Transactions, 1986")]
    [InlineData(1350, 2.25)]
    [InlineData(1300, 2.76)]
    [InlineData(1250, 3.28)]
    [InlineData(1200, 3.79)]
    [InlineData(1154, 4.26)]
    [InlineData(1150.5, 4.30)]
    [InlineData(1148, 4.33)]
    [InlineData(1147, 4.34)]
    public void TemperatureC_PrintedPair_AgreesWithinHalfADegree(double temperatureC, double carbonPercent)
    {
        // 0.5 is the rounding of the table; its row 1300/2.76 lies 0.452 off, 1154/4.26 0.502.
        Assert.InRange(Liquidus.TemperatureC(carbonPercent), temperatureC - 0.51, temperatureC + 0.51);
    }

    [Fact]
    public void TemperatureC_BeyondTheEutectic_HasNoValue() => Assert.True(double.IsNaN(Liquidus.TemperatureC(4.3401)));
}
