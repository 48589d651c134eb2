using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Grades;

namespace MeltShop.Operations.Tests.Laboratory;

public sealed class WindowVerdictTests
{
    [Theory]
    [InlineData(3.6, WindowStanding.Inside)]
    [InlineData(3.8, WindowStanding.Inside)]
    [InlineData(3.8000009, WindowStanding.Inside)] // sums of doubles
    [InlineData(3.8000011, WindowStanding.OverMost)]
    [InlineData(3.5999989, WindowStanding.UnderLeast)]
    public void Of_ValueAtABound_IsComparedUnrounded(double carbon, WindowStanding standing) =>
        Assert.Equal(standing, Of("C", 3.6, 3.8, Analysis.Of((Element.C, carbon))).Standing);

    [Fact]
    public void Of_ElementNotMeasured_IsNeitherZeroNorInside()
    {
        var verdict = Of("Mn", null, 0.5, Analysis.Of((Element.C, 3.6)));

        Assert.Equal((WindowStanding.NotMeasured, null), (verdict.Standing, verdict.Value));
    }

    [Fact]
    public void Of_CarbonEquivalent_NeedsAllItsElements()
    {
        // C + (Si + P)/3 = 3.6 + (2.1 + 0.03)/3 = 4.31, by hand.
        Assert.Equal(4.31, Of("CE", 4.2, 4.4, Analysis.Of((Element.C, 3.6), (Element.Si, 2.1), (Element.P, 0.03))).Value!.Value, 9);
        Assert.Equal(WindowStanding.NotMeasured, Of("CE", 4.2, 4.4, Analysis.Of((Element.C, 3.6), (Element.Si, 2.1))).Standing);
    }

    private static WindowVerdict Of(string quantity, double? least, double? most, Analysis analysis) => Assert.Single(WindowVerdict.Of(
        [new GradeWindow { Stage = WindowStage.Poured, Quantity = quantity, Least = least, Most = most }], analysis));
}
