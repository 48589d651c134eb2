using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>
/// The control chart of a trend of one grade in one furnace. The first coin of each heat counts, of treated iron of each ladle, since later
/// ones are of a bath that was corrected by the first.
/// </summary>
/// <param name="Firsts">In order of time.</param>
/// <param name="Limits">Null where there are too few.</param>
/// <param name="Signals">By sample, the rules that it completes.</param>
public sealed record TrendControl(IReadOnlyList<TrendPoint> Firsts, ControlLimits? Limits, ILookup<long, RunRule> Signals)
{
    /// <param name="points">In order of time.</param>
    /// <param name="rules">Rules looked at.</param>
    public static TrendControl Of(IReadOnlyList<TrendPoint> points, IReadOnlySet<RunRule> rules)
    {
        ArgumentNullException.ThrowIfNull(points);
        var firsts = points.Where(p => p.IsFirst).ToList();
        var values = firsts.ConvertAll(p => p.Value);
        var limits = firsts.Count < ControlSeries.Baseline ? null : ControlLimits.FromIndividuals(values);
        return new(firsts, limits, (limits is null ? [] : RunRules.Find(values, limits, rules)).ToLookup(s => firsts[s.Result].SampleId, s => s.Rule));
    }

    /// <summary>From one first coin to the next, in the unit of the quantity.</summary>
    public IReadOnlyList<double> Moving => [.. Firsts.Zip(Firsts.Skip(1), (a, b) => Math.Abs(b.Value - a.Value))];
}
