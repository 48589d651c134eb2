using CsCheck;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Metallurgy.Tests.Statistics;

public class ReplicateBurnsTests
{
    // Own burns; expected by hand from the contract's rules.
    [Fact]
    public void Evaluate_ThreeBurns_GivesMeanScatterAndRange()
    {
        var carbon = Carbon([3.61, 3.63, 3.65]);

        Assert.Equal(3.63, carbon.Mean, 12);
        Assert.Equal(0.02, carbon.StandardDeviation!.Value, 12);
        Assert.Equal(0.04, carbon.Range, 12);
        Assert.Equal(3, carbon.Count);
    }

    [Fact]
    public void Evaluate_OneBurn_HasNoScatterAndSaysSo()
    {
        var carbon = Carbon([3.61], repeatability: 0.02);

        Assert.Null(carbon.StandardDeviation);
        Assert.Equal("burns.single", carbon.Why!.Code);
    }

    [Theory]
    [InlineData(new[] { 3.61, 3.90 })]
    [InlineData(new[] { 3.61, 3.61, 3.90 })]
    public void Evaluate_UpToThreeWithoutRepeatability_SuspectsNoneAndSaysWhy(double[] burns)
    {
        var carbon = Carbon(burns);

        Assert.Empty(carbon.Suspects);
        Assert.Equal("burns.tooFew", carbon.Why!.Code);
    }

    [Fact]
    public void Evaluate_RangeBeyondRepeatability_SuspectsTheFarthestFromTheMedian()
    {
        var carbon = Carbon([3.61, 3.62, 3.70], repeatability: 0.02);

        Assert.Equal([new SuspectBurn(2, BurnTest.Range, 5)], carbon.Suspects);
        Assert.Null(carbon.Why);
    }

    [Theory]
    [Printed("ISO 5725-6:1994, rounded factors (from memory)")]
    [InlineData(2, 2.772)]
    [InlineData(3, 3.314)]
    [InlineData(4, 3.633)]
    [InlineData(5, 3.858)]
    [InlineData(6, 4.030)]
    public void Evaluate_RangeAtTheLimit_IsAcceptedAndJustBeyondItIsNot(int count, double factor)
    {
        // 95 % points of the studentised range with known standard deviation; ISO 5725-6:1994 prints 2.8, 3.3, 3.6, 3.9, 4.0.
        double[] Burns(double range) => [3.6 + range, .. Enumerable.Repeat(3.6, count - 1)];

        Assert.Empty(Carbon(Burns(factor * 0.02), repeatability: 0.02).Suspects);
        Assert.NotEmpty(Carbon(Burns(factor * 0.02 + 1e-6), repeatability: 0.02).Suspects);
    }

    [Theory]
    [InlineData(new[] { 3.60, 3.70 }, new[] { 0, 1 })]
    [InlineData(new[] { 3.60, 3.65, 3.70 }, new[] { 0, 2 })]
    [InlineData(new[] { 3.70, 3.65, 3.65, 3.60 }, new[] { 0, 3 })]
    [InlineData(new[] { 3.60, 3.60, 3.70, 3.70 }, new[] { 0, 1, 2, 3 })]
    public void Evaluate_TwoEquallyFar_SuspectsAllOfThem(double[] burns, int[] suspects) =>
        Assert.Equal(suspects, Carbon(burns, repeatability: 0.01).Suspects.Select(s => s.Burn));

    [Fact]
    public void Evaluate_SevenBurnsWithRepeatability_GoesByGrubbs()
    {
        var carbon = Carbon([3.60, 3.60, 3.61, 3.61, 3.62, 3.62, 3.90], repeatability: 0.02);

        Assert.Equal([new SuspectBurn(6, BurnTest.Grubbs, 1)], carbon.Suspects);
    }

    [Theory]
    [InlineData(new[] { 3.600, 3.602, 3.605, 3.610 }, null)] // G 1.322
    [InlineData(new[] { 3.600, 3.601, 3.602, 3.620 }, 5)] // G 1.4945: between 1.481 and 1.496
    [InlineData(new[] { 3.600, 3.600, 3.601, 3.700 }, 1)] // G 1.49999
    public void Evaluate_FourBurns_TellsSuspectFromOutlying(double[] burns, int? level)
    {
        var suspects = Carbon(burns).Suspects;

        Assert.Equal(level, suspects.Count == 0 ? null : suspects[0].LevelPercent);
        Assert.All(suspects, s => Assert.Equal((3, BurnTest.Grubbs), (s.Burn, s.Test)));
    }

    [Fact]
    public void Evaluate_EqualBurns_SuspectsNone()
    {
        Assert.Empty(Carbon([3.6, 3.6, 3.6, 3.6, 3.6]).Suspects);
        Assert.Empty(Carbon([0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1]).Suspects);
    }

    [Fact]
    public void Evaluate_ElementMissingFromABurn_IsNotCountedThereAndKeepsItsPlace()
    {
        var burns = new[]
        {
            Analysis.Of((Element.C, 3.6)), Analysis.Of((Element.C, 3.6), (Element.Mg, 0.040)), Analysis.Of((Element.Mg, 0.060)),
        };

        var magnesium = ReplicateBurns.Evaluate(burns, new Dictionary<Element, double> { [Element.Mg] = 0.001 }).Single(e => e.Element == Element.Mg);

        Assert.Equal(2, magnesium.Count);
        Assert.Equal(0.050, magnesium.Mean, 12);
        Assert.Equal([1, 2], magnesium.Suspects.Select(s => s.Burn));
    }

    [Fact]
    public void Evaluate_ShiftedBurns_KeepTheirSuspects() => Law.Holds(
        Gen.Select(Gen.Int[3600, 3700].Array[4, 9], Gen.Int[-500, 500]),
        one =>
        {
            var (thousandths, shift) = one;
            var here = Carbon([.. thousandths.Select(t => t / 1000.0)], repeatability: 0.01);
            var there = Carbon([.. thousandths.Select(t => (t + shift) / 1000.0)], repeatability: 0.01);

            Assert.Equal(here.Suspects, there.Suspects);
            Law.Near(here.Mean + shift / 1000.0, there.Mean);
        });

    private static BurnEvaluation Carbon(double[] percents, double? repeatability = null) => Assert.Single(ReplicateBurns.Evaluate(
        [.. percents.Select(p => Analysis.Of((Element.C, p)))],
        repeatability is { } known ? new Dictionary<Element, double> { [Element.C] = known } : null));
}
