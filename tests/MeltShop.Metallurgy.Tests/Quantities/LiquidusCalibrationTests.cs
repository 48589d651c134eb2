using CsCheck;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Tests.Quantities;

public class LiquidusCalibrationTests
{
    [Fact]
    public void Fit_HeinesTable_GivesHisLine()
    {
        // R. W. Heine, The Fe-C-Si Solidification Diagram for Cast Irons, AFS Transactions, 1986: eight pairs; least squares by hand 1568.56 and 97.20.
        var line = LiquidusCalibration.Fit([(2.25, 1350), (2.76, 1300), (3.28, 1250), (3.79, 1200), (4.26, 1154), (4.30, 1150.5), (4.33, 1148), (4.34, 1147)])!;

        Assert.Equal(1568.56, line.InterceptC, 2);
        Assert.Equal(97.20, line.SlopeCPerPercent, 2);
        Law.Near(0.32360, line.ScatterC!.Value, 0.00001); // with n − 2, by hand
        Assert.Equal(8, line.Pairs);
    }

    [Fact]
    public void Fit_TooFewOrUselessPairs_IsRefused()
    {
        Assert.Null(LiquidusCalibration.Fit([(3.8, 1200), (4.0, 1180)]));
        Assert.Null(LiquidusCalibration.Fit([(3.8, 1200), (3.8, 1199), (3.8, 1201)]));
        Assert.Null(LiquidusCalibration.Fit([(3.8, 1200), (3.9, 1210), (4.0, 1220)]));
    }

    [Fact]
    public void Line_ThereAndBack_IsTheSameCarbonEquivalent() => Law.Holds(
        Gen.Select(Gen.Double[1500, 1650], Gen.Double[80, 130], Gen.Double[3, 4.3]),
        one =>
        {
            var (intercept, slope, equivalent) = one;
            var line = LiquidusCalibration.Fit([.. new[] { 3.0, 3.5, 4.2 }.Select(x => (x, intercept - slope * x))])!;

            Law.Close(equivalent, line.CarbonEquivalentPercent(line.TemperatureC(equivalent)));
            Law.Near(slope, line.SlopeCPerPercent, 1e-6);
            Law.Near(0, line.ScatterC!.Value, 1e-6);
        });

    [Fact]
    public void Printed_Line_IsTheFormula() => Assert.Equal(Liquidus.TemperatureC(3.8), LiquidusCalibration.Printed.TemperatureC(3.8), 12);
}
