using CsCheck;
using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Metallurgy.Tests.Statistics;

public class ControlChartTests
{
    // ISO 7870-2 (from memory), factors of charts for mean and range: d2, A2, D3, D4.
    [Theory]
    [Printed("ISO 7870-2 (from memory)")]
    [InlineData(2, 1.128, 1.880, 0, 3.267)]
    [InlineData(3, 1.693, 1.023, 0, 2.575)]
    [InlineData(4, 2.059, 0.729, 0, 2.282)]
    [InlineData(5, 2.326, 0.577, 0, 2.114)]
    [InlineData(6, 2.534, 0.483, 0, 2.004)]
    [InlineData(7, 2.704, 0.419, 0.076, 1.924)]
    [InlineData(8, 2.847, 0.373, 0.136, 1.864)]
    [InlineData(9, 2.970, 0.337, 0.184, 1.816)]
    [InlineData(10, 3.078, 0.308, 0.223, 1.777)]
    public void Constants_Subgroup_AreThePublishedOnes(int n, double d2, double a2, double d3, double d4)
    {
        Law.Near(d2, ControlChartConstants.RangePerDeviation(n), 0.0006);
        Law.Near(a2, ControlChartConstants.MeanFactor(n), 0.0006);
        Law.Near(d3, ControlChartConstants.RangeLowerFactor(n), 0.0006);
        Law.Near(d4, ControlChartConstants.RangeUpperFactor(n), 0.0011);
    }

    [Fact]
    public void Constants_MovingRangeOfTwo_GivesThePublishedFactor() => Law.Near(2.66, 3 / ControlChartConstants.RangePerDeviation(2), 0.002);

    [Theory]
    [InlineData(1)]
    [InlineData(11)]
    public void Constants_OutsideTheTable_AreRefused(int n) => Assert.Throws<ArgumentOutOfRangeException>(() => ControlChartConstants.MeanFactor(n));

    [Fact]
    public void FromIndividuals_Results_GivesMeanAndMovingRange()
    {
        // By hand: moving ranges 2, 1, 1 → 4/3, over 1.128.
        var limits = ControlLimits.FromIndividuals([10, 12, 11, 12])!;

        Assert.Equal(11.25, limits.Centre, 12);
        Assert.Equal(1.1820, limits.StandardDeviation, 3);
        Assert.Equal((8, 12), new ControlLimits(10, 1).Warning);
        Assert.Equal((7, 13), new ControlLimits(10, 1).Action);
        Assert.Equal(2 / 1.12838, ControlLimits.FromIndividuals([10, 12])!.StandardDeviation, 9);
        Assert.Null(ControlLimits.FromIndividuals([10]));
        Assert.Null(ControlLimits.FromIndividuals([10, 10, 10]));
    }

    [Fact]
    public void RunRules_Patterns_AreFoundWhereTheyAreComplete()
    {
        ControlLimits limits = new(0, 1);

        Assert.Equal([(2, RunRule.OneBeyondThree), (2, RunRule.TwoOfThreeBeyondTwo)], RunRules.Find([0, 2.5, 3.1], limits));
        Assert.Equal([(2, RunRule.TwoOfThreeBeyondTwo)], RunRules.Find([2.1, 0, 2.1, 0], limits));
        Assert.Empty(RunRules.Find([2.1, 0, -2.1, 0, 0, 2.1], limits));
        Assert.Equal([(7, RunRule.EightOnOneSide), (8, RunRule.EightOnOneSide)], RunRules.Find([.. Enumerable.Repeat(0.1, 9), -0.1], limits));
        Assert.Empty(RunRules.Find([.. Enumerable.Repeat(0.1, 7), 0, .. Enumerable.Repeat(0.1, 7)], limits));
    }

    [Fact]
    public void RunRules_ResultsTurnedRound_FindTheSamePatterns() => Law.Holds(Gen.Int[-256, 256].Array[0, 30], steps =>
    {
        var results = steps.Select(s => s / 64.0).ToArray();

        Assert.Equal(RunRules.Find(results, new(0, 1)), RunRules.Find([.. results.Select(r => 5 - 2 * r)], new(5, 2)));
    });

    [Theory]
    [InlineData(3.60, LimitVerdict.In)]
    [InlineData(3.515, LimitVerdict.TooClose)]
    [InlineData(3.50, LimitVerdict.TooClose)]
    [InlineData(3.485, LimitVerdict.TooClose)]
    [InlineData(3.47, LimitVerdict.Out)]
    [InlineData(3.71, LimitVerdict.TooClose)]
    [InlineData(3.73, LimitVerdict.Out)]
    public void Decide_GuardBand_TellsInOutAndTooClose(double value, LimitVerdict expected) =>
        Assert.Equal(expected, GuardBand.Decide(value, 3.50, 3.70, GuardBand.Width(0.02, 4, 95)));

    [Theory]
    [InlineData(3.4999995, LimitVerdict.In)]
    [InlineData(3.4999985, LimitVerdict.Out)]
    public void Decide_WithoutABand_KeepsTheToleranceOfTheHouse(double value, LimitVerdict expected) =>
        Assert.Equal(expected, GuardBand.Decide(value, 3.50, null, 0));

    [Fact]
    public void Decide_WithoutLimits_IsIn() => Assert.Equal(LimitVerdict.In, GuardBand.Decide(99, null, null, 0.02));

    [Fact]
    public void Width_MoreBurnsAndLessConfidence_NarrowTheBand()
    {
        Assert.Equal(0, GuardBand.Width(0.02, 3, 50));
        Assert.True(GuardBand.Width(0.02, 4, 95) < GuardBand.Width(0.02, 3, 95));
        Assert.Equal(0.02 * 1.6448536269514722, GuardBand.Width(0.02, 1, 95), 15);
    }

    [Fact]
    [Printed("NIST/SEMATECH e-Handbook of Statistical Methods, 6.1.6 (from memory)")]
    public void Capability_HandbookExample_IsReproduced()
    {
        // NIST/SEMATECH, e-Handbook of Statistical Methods, 6.1.6 (from memory): limits 8 and 20, mean 16, s 2 → Cp 1.0, Cpk 0.6667; χ² of 49: 31.555 and 70.222.
        var spread = Capability.Spread(8, 20, 2, 50);

        Assert.Equal(1.0, spread.Value, 12);
        Assert.Equal(Math.Sqrt(31.555 / 49), spread.Lower, 4);
        Assert.Equal(Math.Sqrt(70.222 / 49), spread.Upper, 4);
        Assert.Equal(0.6667, Capability.NearerLimit(8, 20, 16, 2, 50)!.Value, 4);
        Assert.Equal(0.6667, Capability.NearerLimit(null, 20, 16, 2, 50)!.Value, 4);
        Assert.Equal(4.0 / 3, Capability.NearerLimit(8, null, 16, 2, 50)!.Value, 12);
        Assert.Null(Capability.NearerLimit(null, null, 16, 2, 50));
    }

    [Fact]
    public void Capability_MoreResults_NarrowTheInterval()
    {
        // By hand, Bissell's form: 0.6667 ± 1.95996·√(1/450 + 0.4444/98).
        var fifty = Capability.NearerLimit(8, 20, 16, 2, 50)!;
        var hundred = Capability.NearerLimit(8, 20, 16, 2, 100)!;

        Assert.Equal(0.6667 - 0.1611, fifty.Lower, 3);
        Assert.True(hundred.Upper - hundred.Lower < fifty.Upper - fifty.Lower);
        Assert.Throws<ArgumentOutOfRangeException>(() => Capability.Spread(8, 20, 2, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Capability.NearerLimit(8, 20, 16, 2, 1));
    }
}
