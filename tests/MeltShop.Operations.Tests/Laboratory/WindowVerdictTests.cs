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

    /// <summary>Mn − 1.7 S: 0.60 − 1.7 · 0.08 = 0.464, by hand.</summary>
    [Fact]
    public void Of_ManganeseBalance_IsJudgedAndNotOfTreatedIron()
    {
        var grey = Analysis.Of((Element.Mn, 0.60), (Element.S, 0.08));

        Assert.Equal((0.464, WindowStanding.Inside), (Math.Round(Of("manganeseBalance", 0.3, 0.5, grey).Value!.Value, 9), Of("manganeseBalance", 0.3, 0.5, grey).Standing));
        Assert.Equal((WindowStanding.NotJudged, null), (Of("manganeseBalance", 0.3, 0.5, grey.With(Element.Mg, 0.04)).Standing, Of("manganeseBalance", 0.3, 0.5, grey.With(Element.Mg, 0.04)).Value));
        Assert.Equal(["S"], Of("manganeseBalance", 0.3, 0.5, Analysis.Of((Element.Mn, 0.60))).Missing);
    }

    [Fact]
    public void Of_PearliteFactor_NamesWhatItTookAsZero()
    {
        var verdict = Of("pearliteFactor", null, 3, Analysis.Of((Element.Mn, 0.3), (Element.Si, 2.5), (Element.Cu, 0.3), (Element.Sn, 0.005), (Element.Cr, 0.04)));

        Assert.Equal(2.734, verdict.Value!.Value, 9); // the printed example of the formula
        Assert.Equal((WindowStanding.Inside, "As, Sb, Pb, Bi"), (verdict.Standing, string.Join(", ", verdict.TakenAsZero)));
    }

    private static WindowVerdict Of(string quantity, double? least, double? most, Analysis analysis) => Assert.Single(WindowVerdict.Of(
        [new GradeWindow { Stage = WindowStage.Poured, Quantity = quantity, Least = least, Most = most }], analysis));
}
