using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Metallurgy.Tests.Statistics;

public class GrubbsTests
{
    // F. E. Grubbs, G. Beck, Technometrics 14 (1972): two-sided critical values (from memory; recomputed with an independent statistics package).
    [Theory]
    [Printed("F. E. Grubbs, G. Beck, Technometrics 14, 1972 (from memory)")]
    [InlineData(3, 1.154, 1.155)]
    [InlineData(4, 1.481, 1.496)]
    [InlineData(5, 1.715, 1.764)]
    [InlineData(6, 1.887, 1.973)]
    [InlineData(7, 2.020, 2.139)]
    [InlineData(8, 2.127, 2.274)]
    [InlineData(9, 2.215, 2.387)]
    [InlineData(10, 2.290, 2.482)]
    [InlineData(12, 2.412, 2.636)]
    [InlineData(15, 2.548, 2.806)]
    public void Critical_Readings_AreTheTabulatedValues(int readings, double fivePercent, double onePercent)
    {
        Assert.Equal(fivePercent, Grubbs.Critical(readings, 0.05), 3);
        Assert.Equal(onePercent, Grubbs.Critical(readings, 0.01), 3);
    }

    [Fact]
    [Printed("D. Harvey, Analytical Chemistry 2.1, appendix 7: misprints")]
    public void Critical_WidelyUsedTable_IsMisprintedTwice()
    {
        // D. Harvey, Analytical Chemistry 2.1, appendix 7: 2.202 for n = 7 at 5 %, 2.755 for n = 15 at 1 %. The code takes the formula's side:
        // critical values rise with n, and 2.202 lies above the table's own value for n = 8 (2.126).
        Assert.NotEqual(2.202, Grubbs.Critical(7, 0.05), 2);
        Assert.NotEqual(2.755, Grubbs.Critical(15, 0.01), 2);
        Assert.True(Grubbs.Critical(7, 0.05) < Grubbs.Critical(8, 0.05));
    }

    [Fact]
    public void Critical_ThreeReadings_CannotRejectAnything() =>
        Assert.InRange(Grubbs.Critical(3, 0.01), 2 / Math.Sqrt(3) - 0.001, 2 / Math.Sqrt(3));

    // Two degrees of freedom: t = (1 − 2α)·√(2/(4α(1 − α))), the closed form; four: Shaw, Journal of Computational Finance 9 (2006).
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.0125)]
    [InlineData(0.00125)]
    [InlineData(0.00001)]
    public void UpperQuantile_ClosedForms_AgreeToTenDigits(double tail)
    {
        var two = (1 - 2 * tail) * Math.Sqrt(2 / (4 * tail * (1 - tail)));
        var a = 4 * tail * (1 - tail);
        var four = 2 * Math.Sqrt(Math.Cos(Math.Acos(Math.Sqrt(a)) / 3) / Math.Sqrt(a) - 1);

        Assert.InRange(StudentT.UpperQuantile(tail, 2) / two, 1 - 1e-10, 1 + 1e-10);
        Assert.InRange(StudentT.UpperQuantile(tail, 4) / four, 1 - 1e-10, 1 + 1e-10);
    }

    // NIST/SEMATECH e-Handbook of Statistical Methods, table of Student's t (from memory).
    [Theory]
    [Printed("NIST/SEMATECH e-Handbook, table of Student's t (from memory)")]
    [InlineData(0.025, 2, 4.303)]
    [InlineData(0.025, 10, 2.228)]
    [InlineData(0.005, 30, 2.750)]
    [InlineData(0.05, 5, 2.015)]
    public void UpperQuantile_Tabulated_Agrees(double tail, int degrees, double expected) => Assert.Equal(expected, StudentT.UpperQuantile(tail, degrees), 3);

    [Theory]
    [InlineData(0, 5)]
    [InlineData(0.6, 5)]
    [InlineData(0.05, 1)]
    public void UpperQuantile_OutsideItsRange_IsRefused(double tail, int degrees) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.UpperQuantile(tail, degrees));
}
