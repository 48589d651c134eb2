using CsCheck;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Tests.Elements;

public class AnalysisTests
{
    [Fact]
    public void Of_SumOver100_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => Analysis.Of((Element.C, 60), (Element.Si, 41)));
    }

    [Fact]
    public void Indexer_ElementNotMeasured_IsNullAndNotZero()
    {
        var analysis = Analysis.Of((Element.C, 3.5), (Element.Cu, 0));

        Assert.Null(analysis[Element.Si]);
        Assert.Equal(0, analysis[Element.Cu]);
        Assert.Equal(96.5, analysis.IronPercent, 12);
    }

    [Theory]
    [InlineData("Si", double.NaN, "percent.notFinite")]
    [InlineData("Si", double.PositiveInfinity, "percent.notFinite")]
    [InlineData("Si", -0.01, "percent.negative")]
    [InlineData("Si", 100.01, "percent.over100")]
    [InlineData("Fe", 5, "analysis.iron")]
    public void Check_BadPercent_NamesTheElementAndWhy(string symbol, double percent, string code)
    {
        var finding = Assert.Single(Analysis.Check([new(Element.C, 3.5), new(Element.Parse(symbol), percent)], "burns[2]"));

        Assert.Equal(($"burns[2].{symbol}", code), (finding.Path, finding.Code));
    }

    [Theory]
    [InlineData(96.5, true)]
    [InlineData(96.5 + 0.9e-9, true)]
    [InlineData(96.5 + 1e-6, false)]
    public void Check_Sum_LeavesRoomForRoundingOnly(double silicon, bool sound)
    {
        var findings = Analysis.Check([new(Element.C, 3.5), new(Element.Si, silicon)], "analysis").ToList();

        Assert.Equal(sound, findings.Count == 0);
        Assert.All(findings, f => Assert.Equal(("analysis", "analysis.sum"), (f.Path, f.Code)));
    }

    [Fact]
    public void With_MeasuredOrNot_SetsOnePercentOnly()
    {
        var analysis = Analysis.Of((Element.C, 3.5), (Element.Si, 2.0));

        Assert.Equal(Analysis.Of((Element.Si, 2.1), (Element.C, 3.5)), analysis.With(Element.Si, 2.1));
        Assert.Equal(3, analysis.With(Element.Mn, 0).Elements.Count);
        Assert.NotEqual(analysis, analysis.With(Element.Mn, 0));
    }

    [Fact]
    public void Of_AnyOrder_IsTheSameAnalysisInReportOrder() => Law.Holds(
        Gen.Select(Gen.Double[0, 5], Gen.Double[0, 5], Gen.Double[0, 5]),
        one =>
        {
            var (c, si, mn) = one;
            var (first, second) = (Analysis.Of((Element.Mn, mn), (Element.C, c), (Element.Si, si)), Analysis.Of((Element.Si, si), (Element.Mn, mn), (Element.C, c)));

            Assert.Equal(first, second);
            Assert.Equal(first.GetHashCode(), second.GetHashCode());
            Assert.Equal([Element.C, Element.Si, Element.Mn], first.Elements);
            Law.Near(100, first.SumPercent + first.IronPercent);
        });
}
