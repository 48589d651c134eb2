using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Tests;

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
}
