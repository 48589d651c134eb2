namespace MeltShop.Metallurgy.Statistics;

/// <summary>Centre and scatter of a control chart of single results: ± 2 standard deviations warn, ± 3 call for action.</summary>
/// <param name="Centre">Certified or long-run mean.</param>
/// <param name="StandardDeviation">Standard deviation, over 0.</param>
public sealed record ControlLimits(double Centre, double StandardDeviation)
{
    /// <summary>Lower and upper warning limit.</summary>
    public (double Lower, double Upper) Warning => (Centre - 2 * StandardDeviation, Centre + 2 * StandardDeviation);

    /// <summary>Lower and upper action limit.</summary>
    public (double Lower, double Upper) Action => (Centre - 3 * StandardDeviation, Centre + 3 * StandardDeviation);

    /// <summary>Limits from single results: mean, and the mean moving range of two over 1.128 (ISO 7870-2, charts for individuals).</summary>
    /// <param name="results">In order of time, 2 or more.</param>
    /// <returns>The limits; null for fewer than two results or results without scatter.</returns>
    public static ControlLimits? FromIndividuals(IReadOnlyList<double> results)
    {
        ArgumentNullException.ThrowIfNull(results);
        if (results.Count < 2) return null;
        var moving = results.Zip(results.Skip(1), (a, b) => Math.Abs(b - a)).Average();
        return moving > 0 ? new(results.Average(), moving / ControlChartConstants.RangePerDeviation(2)) : null;
    }

    /// <summary>Centre and upper limit of moving ranges of two; a range has no lower limit there (ISO 7870-2, D3 = 0).</summary>
    /// <param name="ranges">Differences from one result to the next, 0 or more each.</param>
    /// <returns>The limits; null for none, or for ranges that are all 0.</returns>
    public static ControlLimits? OfMovingRanges(IReadOnlyList<double> ranges)
    {
        ArgumentNullException.ThrowIfNull(ranges);
        var centre = ranges.Count == 0 ? 0 : ranges.Average();
        return centre > 0 ? new(centre, centre * (ControlChartConstants.RangeUpperFactor(2) - 1) / 3) : null;
    }
}
