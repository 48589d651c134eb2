namespace MeltShop.Metallurgy.Statistics;

/// <summary>Looks for run patterns in results of a control sample.</summary>
public static class RunRules
{
    /// <summary>
    /// Results between two false alarms of a process that stands still, on average: 370 by the first rule alone, 225 with the second, 153 with the third instead,
    /// 122 with all three. Source: C. W. Champ, W. H. Woodall, Exact Results for Shewhart Control Charts with Supplementary Runs Rules, Technometrics 29, 1987 (from memory).
    /// </summary>
    /// <param name="rules">The rules looked at, among them the first.</param>
    /// <returns>The average; null for a set without the first rule, which the paper does not give.</returns>
    public static double? ResultsBetweenFalseAlarms(IReadOnlySet<RunRule> rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (!rules.Contains(RunRule.OneBeyondThree)) return null;
        return (rules.Contains(RunRule.TwoOfThreeBeyondTwo), rules.Contains(RunRule.EightOnOneSide)) switch
        {
            (true, true) => 122.05,
            (true, false) => 225.44,
            (false, true) => 152.73,
            _ => 370.40,
        };
    }

    /// <summary>Every result at which a pattern is complete, with the pattern.</summary>
    /// <param name="results">In order of time.</param>
    /// <param name="limits">Centre and scatter.</param>
    /// <returns>Index of the result, from 0, and the rule; in order of time.</returns>
    public static IReadOnlyList<(int Result, RunRule Rule)> Find(IReadOnlyList<double> results, ControlLimits limits)
    {
        ArgumentNullException.ThrowIfNull(results);
        ArgumentNullException.ThrowIfNull(limits);
        var z = results.Select(r => (r - limits.Centre) / limits.StandardDeviation).ToArray();
        var found = new List<(int, RunRule)>();
        for (var i = 0; i < z.Length; i++)
        {
            if (Math.Abs(z[i]) > 3) found.Add((i, RunRule.OneBeyondThree));
            if (Math.Abs(z[i]) > 2 && Last(3, i).Count(x => x * Math.Sign(z[i]) > 2) >= 2) found.Add((i, RunRule.TwoOfThreeBeyondTwo));
            if (i >= 7 && z[i] != 0 && Last(8, i).All(x => Math.Sign(x) == Math.Sign(z[i]))) found.Add((i, RunRule.EightOnOneSide));
        }

        return found;

        double[] Last(int count, int to) => z[Math.Max(0, to - count + 1)..(to + 1)];
    }
}
