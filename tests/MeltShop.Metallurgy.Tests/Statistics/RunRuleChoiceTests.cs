using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Metallurgy.Tests.Statistics;

/// <summary>The rules that a control chart looks at by choice, and how often each choice cries for nothing.</summary>
public sealed class RunRuleChoiceTests
{
    private static readonly ControlLimits Limits = new(0, 1);

    [Fact]
    public void Find_TheUsualRules_FindNineOnOneSideAndNotEight()
    {
        Assert.Empty(RunRules.Find([.. Enumerable.Repeat(0.1, 8)], Limits, RunRules.Usual));
        Assert.Equal([(8, RunRule.NineOnOneSide), (9, RunRule.NineOnOneSide)], RunRules.Find([.. Enumerable.Repeat(-0.1, 10)], Limits, RunRules.Usual));
        Assert.Empty(RunRules.Find([.. Enumerable.Repeat(0.1, 8), 0, .. Enumerable.Repeat(0.1, 8)], Limits, RunRules.Usual));
        Assert.Equal([(1, RunRule.OneBeyondThree)], RunRules.Find([2.5, 3.1, 2.5], Limits, RunRules.Usual));
    }

    [Fact]
    public void Find_OneRuleChosen_FindsThatOnly()
    {
        double[] results = [2.5, 2.5, 3.5];

        Assert.Equal([(1, RunRule.TwoOfThreeBeyondTwo), (2, RunRule.TwoOfThreeBeyondTwo)], RunRules.Find(results, Limits, new HashSet<RunRule> { RunRule.TwoOfThreeBeyondTwo }));
        Assert.Empty(RunRules.Find(results, Limits, new HashSet<RunRule>()));
    }

    [Fact]
    public void ResultsBetweenFalseAlarms_NineOnOneSide_AreThoseOfAMarkovChain()
    {
        Assert.Equal(216.70, RunRules.ResultsBetweenFalseAlarms(RunRules.Usual)!.Value, 2);
        Law.Near(OneBeyondThreeOrARunOf(9), RunRules.ResultsBetweenFalseAlarms(RunRules.Usual)!.Value, 0.005);
        Law.Near(OneBeyondThreeOrARunOf(8), Alarms(RunRule.OneBeyondThree, RunRule.EightOnOneSide)!.Value, 0.005); // Champ and Woodall, 1987 (from memory)
        Assert.Equal(Alarms(RunRule.OneBeyondThree, RunRule.EightOnOneSide), Alarms(RunRule.OneBeyondThree, RunRule.EightOnOneSide, RunRule.NineOnOneSide));
        Assert.Null(Alarms(RunRule.NineOnOneSide));
    }

    [Fact]
    public void ResultsBetweenFalseAlarms_TwoOfThreeAndNine_AgreeWithCharts()
    {
        // 1500 charts of normal results, each up to its first alarm, seed 1971; the standard error of the mean is about 4.
        var rules = new HashSet<RunRule> { RunRule.OneBeyondThree, RunRule.TwoOfThreeBeyondTwo, RunRule.NineOnOneSide };
        var random = new Random(1971);
        var lengths = Enumerable.Range(0, 1_500).Select(_ =>
        {
            var results = Enumerable.Range(0, 1_000).Select(_ => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble())).ToArray();
            return RunRules.Find(results, Limits, rules) is { Count: > 0 } found ? found[0].Result + 1 : results.Length;
        });

        Assert.InRange(lengths.Average(), 158.74 - 13, 158.74 + 13);
        Assert.Equal(158.74, RunRules.ResultsBetweenFalseAlarms(rules));
    }

    private static double? Alarms(params RunRule[] rules) => RunRules.ResultsBetweenFalseAlarms(rules.ToHashSet());

    /// <summary>Expected results up to the first beyond three or a run on one side, from the state of no run: q is the chance of either side within three.</summary>
    private static double OneBeyondThreeOrARunOf(int run)
    {
        var q = Normal.Cumulative(3) - 0.5;
        // With k in a row: e(k) = 1 + q e(k + 1) + q e(1), e(run) = 0; so e(1) (1 − q (1 + q + … )) = 1 + q + …, each sum of run − 1 terms.
        var sum = Enumerable.Range(0, run - 1).Sum(k => Math.Pow(q, k));
        var first = sum / (1 - q * sum);
        return 1 + 2 * q * first;
    }
}
