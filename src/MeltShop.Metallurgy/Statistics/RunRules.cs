namespace MeltShop.Metallurgy.Statistics;

/// <summary>Looks for run patterns in results of a control sample.</summary>
public static class RunRules
{
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
