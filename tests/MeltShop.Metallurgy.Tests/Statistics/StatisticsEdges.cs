using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Metallurgy.Tests.Statistics;

public class StatisticsEdges
{
    [Fact]
    public void Limits_WideScatter_AreTwoAndThreeOfIt()
    {
        Assert.Equal((6, 14), new ControlLimits(10, 2).Warning);
        Assert.Equal((4, 16), new ControlLimits(10, 2).Action);
    }

    [Theory]
    [InlineData(0, null, -1e-6)]
    [InlineData(null, 0, 1e-6)]
    [InlineData(null, 0, 0.5e-6)]
    [InlineData(0, null, -0.5e-6)]
    public void Decide_WithinTheToleranceOfALimit_IsIn(int? least, int? most, double value) => Assert.Equal(LimitVerdict.In, GuardBand.Decide(value, least, most, 0));

    [Fact]
    public void RunRules_ExactlyOnALine_FindNothing()
    {
        ControlLimits limits = new(0, 1);

        Assert.DoesNotContain(RunRules.Find([3, -3], limits), f => f.Rule == RunRule.OneBeyondThree);
        Assert.Empty(RunRules.Find([2, 2, 2], limits));
        Assert.Empty(RunRules.Find([2, 2, 0, 0], limits));
        Assert.Empty(RunRules.Find([2, 2.1, 0], limits));
        Assert.Empty(RunRules.Find([2.1, 0, 0, 2.1], limits));
        Assert.Equal([(1, RunRule.TwoOfThreeBeyondTwo)], RunRules.Find([-2.1, -2.1], limits));
        Assert.Equal([(1, RunRule.TwoOfThreeBeyondTwo)], RunRules.Find([2.1, 2.1, 2], limits));
    }

    [Fact]
    [Printed("C. W. Champ, W. H. Woodall, Exact Results for Shewhart Control Charts with Supplementary Runs Rules, Technometrics 29, 1987 (from memory)")]
    public void RunRules_ProcessThatStandsStill_GivesThePublishedFalseAlarms()
    {
        // 1500 charts of normal results, each up to its first alarm by all three rules, seed 1785; the standard error of the mean is about 3.1.
        var random = new Random(1785);
        var lengths = new List<int>();
        while (lengths.Count < 1_500)
        {
            var results = Enumerable.Range(0, 700).Select(_ => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble())).ToArray();
            lengths.Add(RunRules.Find(results, new(0, 1)) is { Count: > 0 } found ? found[0].Result + 1 : results.Length);
        }

        Assert.InRange(lengths.Average(), 122.05 - 10, 122.05 + 10);
        Assert.Equal(122.05, Alarms(RunRule.OneBeyondThree, RunRule.TwoOfThreeBeyondTwo, RunRule.EightOnOneSide));
        Assert.Equal(225.44, Alarms(RunRule.OneBeyondThree, RunRule.TwoOfThreeBeyondTwo));
        Assert.Equal(152.73, Alarms(RunRule.OneBeyondThree, RunRule.EightOnOneSide));
        Law.Near(1 / (2 * (1 - Normal.Cumulative(3))), Alarms(RunRule.OneBeyondThree)!.Value, 0.01);
        Assert.Null(Alarms(RunRule.EightOnOneSide));

        static double? Alarms(params RunRule[] rules) => RunRules.ResultsBetweenFalseAlarms(rules.ToHashSet());
    }

    [Fact]
    public void UpperQuantile_Half_IsTheMiddle() => Law.Near(0, StudentT.UpperQuantile(0.5, 5));

    [Fact]
    public void Evaluate_SeveralElements_ComeInReportOrder() => Assert.Equal(
        ["C", "Si", "Mg"],
        ReplicateBurns.Evaluate([Analysis.Of((Element.Mg, 0.04), (Element.Si, 2)), Analysis.Of((Element.C, 3.6))]).Select(e => e.Element.Symbol));
}
