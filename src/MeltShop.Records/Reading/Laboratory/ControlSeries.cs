using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>What an instrument read of one element on one reference material, with its control limits.</summary>
/// <param name="Points">In order of time.</param>
/// <param name="Limits">Null where neither enough checks nor the repeatability say any.</param>
/// <param name="IsGiven">The limits stand about the certified value, for want of enough checks; else they come from the first of them.</param>
/// <param name="Signals">Point, from 0, and the rule that it completes.</param>
public sealed record ControlSeries(
    ReferenceView Reference, CertifiedView Certified, IReadOnlyList<ControlPoint> Points, ControlLimits? Limits, bool IsGiven,
    IReadOnlyList<(int Point, RunRule Rule)> Signals)
{
    /// <summary>Fewer say too little about their own scatter (common practice, no source).</summary>
    public const int Baseline = 20;

    /// <summary>One for each certified element of each material that was read at least once.</summary>
    /// <param name="samples">In order of time.</param>
    /// <param name="rules">Rules looked at; null for the usual.</param>
    public static IReadOnlyList<ControlSeries> Of(
        IReadOnlyList<ControlSampleView> samples, IReadOnlyList<ReferenceView> references, InstrumentView instrument, IReadOnlySet<RunRule>? rules = null)
    {
        ArgumentNullException.ThrowIfNull(samples);
        ArgumentNullException.ThrowIfNull(references);
        ArgumentNullException.ThrowIfNull(instrument);
        return
        [
            .. from reference in references
               from certified in reference.Values
               let points = Read(samples, reference.Id, certified.Element)
               where points.Count > 0
               select Of(reference, certified, points, instrument.Of(certified.Element)?.Repeatability, rules ?? RunRules.Usual),
        ];
    }

    private static ControlSeries Of(ReferenceView reference, CertifiedView certified, List<ControlPoint> points, double? repeatability, IReadOnlySet<RunRule> rules)
    {
        var own = points.Count < Baseline ? null : ControlLimits.FromIndividuals([.. points.Take(Baseline).Select(p => p.Percent)]);
        var limits = own ?? Given(certified, points, repeatability);
        return new(reference, certified, points, limits, own is null && limits is not null, limits is null ? [] : RunRules.Find([.. points.Select(p => p.Percent)], limits, rules));
    }

    private static List<ControlPoint> Read(IReadOnlyList<ControlSampleView> samples, long referenceId, Element element) =>
    [
        .. from sample in samples
           where sample.ReferenceMaterialId == referenceId
           from mean in sample.Means
           where mean.Element == element
           select new ControlPoint(sample.Id, sample.Origin.ObservedAt, mean.Percent, mean.Count) { Remarks = sample.Remarks },
    ];

    /// <summary>
    /// Scatter of a mean of as few burns as any check had, and the doubt of the certificate, taken as an interval of 95 % (common
    /// practice, no source): independent, so their squares add.
    /// </summary>
    private static ControlLimits? Given(CertifiedView certified, List<ControlPoint> points, double? repeatability) =>
        repeatability is { } one ? new(certified.Percent, double.Hypot(one / Math.Sqrt(points.Min(p => p.Results)), (certified.PlusMinus ?? 0) / 2)) : null;
}

/// <summary>Mean of one element in one control sample.</summary>
/// <param name="Results">Burns in the mean.</param>
public sealed record ControlPoint(long ControlSampleId, DateTimeOffset At, double Percent, int Results)
{
    /// <summary>What was found to be the reason, or changed; null where nobody said anything.</summary>
    public string? Remarks { get; init; }
}
