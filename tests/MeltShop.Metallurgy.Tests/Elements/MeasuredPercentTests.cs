using System.Globalization;
using CsCheck;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Tests.Elements;

public class MeasuredPercentTests
{
    [Theory]
    [InlineData("C", 3.555, "3.56")]
    [InlineData("Si", 2.1, "2.10")]
    [InlineData("P", 0.0125, "0.013")]
    [InlineData("Mn", 0.005, "0.01")]
    [InlineData("Pb", 0.00045, "0.0005")]
    [InlineData("Cu", 0, "0.00")]
    public void Text_Measured_IsRoundedOnceToTheCustomaryDecimals(string symbol, double percent, string expected) =>
        Assert.Equal(expected, new MeasuredPercent(Element.Parse(symbol), percent).Text(CultureInfo.InvariantCulture));

    [Fact]
    public void Text_BelowDetection_KeepsTheLimitAndIsNeverZero()
    {
        var below = new MeasuredPercent(Element.Sn, 0.0004, IsBelowDetection: true);

        Assert.Equal("< 0.0004", below.Text(CultureInfo.InvariantCulture));
        Assert.Equal("< 0,0004", below.Text(CultureInfo.GetCultureInfo("de-DE")));
        Assert.NotEqual(below, new MeasuredPercent(Element.Sn, 0.0004));
    }

    [Fact]
    public void FromPartsPerMillion_Nitrogen_IsNotMistakenForPercent()
    {
        var nitrogen = MeasuredPercent.FromPartsPerMillion(Element.N, 80);

        Assert.Equal(0.0080, nitrogen.Percent, 15);
        Assert.Equal("0.0080", nitrogen.Text(CultureInfo.InvariantCulture));
        Assert.True(MeasuredPercent.FromPartsPerMillion(Element.N, 5, isBelowDetection: true).IsBelowDetection);
    }

    [Fact]
    public void PartsPerMillion_ThereAndBack_IsTheSamePercent() => Law.Holds(Gen.Double[0, 100], percent =>
        Law.Close(percent, MeasuredPercent.FromPartsPerMillion(Element.N, new MeasuredPercent(Element.N, percent).PartsPerMillion).Percent, 1e-15));

    [Fact]
    public void Rounded_AnyPercent_IsWithinHalfOfTheLastDecimal() => Law.Holds(Gen.Select(Gen.Double[0, 100], Gen.Int[0, Element.All.Count - 1].Select(i => Element.All[i])), one =>
    {
        var (percent, element) = one;
        Law.Near(percent, (double)new MeasuredPercent(element, percent).Rounded, 0.5 * Math.Pow(10, -element.Decimals) + 1e-9);
    });
}
