namespace MeltShop.Metallurgy.Statistics;

/// <summary>Looks for run patterns in results of a control sample.</summary>
public static class RunRules
{
    /// <summary>
    /// What a chart looks at unless somebody chose otherwise: beyond three standard deviations, and nine on one side.
    /// Source: L. S. Nelson, The Shewhart Control Chart: Tests for Special Causes, Journal of Quality Technology 16, 1984, tests 1 and 2 (from memory).
    /// </summary>
    public static IReadOnlySet<RunRule> Usual { get; } = new HashSet<RunRule> { RunRule.OneBeyondThree, RunRule.NineOnOneSide };

    /// <summary>The supplementary rules of Champ and Woodall that are offered here, with the first.</summary>
    private static readonly HashSet<RunRule> ChampAndWoodall = [RunRule.OneBeyondThree, RunRule.TwoOfThreeBeyondTwo, RunRule.EightOnOneSide];

    /// <summary>
    /// Results between two false alarms of a process that stands still, on average: 370 by the first rule alone, 225 with the second, 153 with the third instead,
    /// 122 with all three. Source: C. W. Champ, W. H. Woodall, Exact Results for Shewhart Control Charts with Supplementary Runs Rules, Technometrics 29, 1987 (from memory).
    /// Those with nine on one side are our own, reckoned by the paper's method (a Markov chain) to its two decimals. Whoever looks at eight has seen nine.
    /// </summary>
    /// <param name="rules">The rules looked at, among them the first.</param>
    /// <returns>The average; null for a set without the first rule, which is not reckoned here.</returns>
    public static double? ResultsBetweenFalseAlarms(IReadOnlySet<RunRule> rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (!rules.Contains(RunRule.OneBeyondThree)) return null;
        var two = rules.Contains(RunRule.TwoOfThreeBeyondTwo);
        if (rules.Contains(RunRule.EightOnOneSide)) return two ? 122.05 : 152.73;
        if (rules.Contains(RunRule.NineOnOneSide)) return two ? 158.74 : 216.70;
        return two ? 225.44 : 370.40;
    }

    /// <summary>Every result at which a pattern is complete, with the pattern.</summary>
    /// <param name="results">In order of time.</param>
    /// <param name="limits">Centre and scatter.</param>
    /// <param name="rules">The rules looked at; null for the three of Champ and Woodall.</param>
    /// <returns>Index of the result, from 0, and the rule; in order of time.</returns>
    public static IReadOnlyList<(int Result, RunRule Rule)> Find(IReadOnlyList<double> results, ControlLimits limits, IReadOnlySet<RunRule>? rules = null)
    {
        ArgumentNullException.ThrowIfNull(results);
        ArgumentNullException.ThrowIfNull(limits);
        var z = results.Select(r => (r - limits.Centre) / limits.StandardDeviation).ToArray();
        var found = new List<(int, RunRule)>();
        for (var i = 0; i < z.Length; i++)
        {
            if (Math.Abs(z[i]) > 3) found.Add((i, RunRule.OneBeyondThree));
            if (Math.Abs(z[i]) > 2 && Last(3, i).Count(x => x * Math.Sign(z[i]) > 2) >= 2) found.Add((i, RunRule.TwoOfThreeBeyondTwo));
            if (IsOnOneSide(8, i)) found.Add((i, RunRule.EightOnOneSide));
            if (IsOnOneSide(9, i)) found.Add((i, RunRule.NineOnOneSide));
        }

        return [.. found.Where(f => (rules ?? ChampAndWoodall).Contains(f.Item2))];

        bool IsOnOneSide(int count, int to) => to >= count - 1 && z[to] != 0 && Last(count, to).All(x => Math.Sign(x) == Math.Sign(z[to]));

        double[] Last(int count, int to) => z[Math.Max(0, to - count + 1)..(to + 1)];
    }
}
