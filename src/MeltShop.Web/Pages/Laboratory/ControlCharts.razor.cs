using MeltShop.Metallurgy.Statistics;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Charts;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>The chart of individuals and of moving ranges of one element on one reference material.</summary>
public sealed partial class ControlCharts
{
    [Parameter, EditorRequired]
    public ControlSeries Series { get; set; } = null!;

    /// <summary>Where its heading stands on the page.</summary>
    internal static string Anchor(ControlSeries series) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"chart-{series.Reference.Id}-{series.Certified.Element.Symbol}");

    private int Decimals => Series.Certified.Element.Decimals;

    private IReadOnlyList<ChartPoint> Points =>
        [.. Series.Points.Select((point, index) => new ChartPoint(Site.DayAndTime(point.At), point.Percent, Signal(index), point.Remarks))];

    private string? Last => Series.Signals.Any(signal => signal.Point == Series.Points.Count - 1) ? Text["LastBreaks", Signal(Series.Points.Count - 1)!].Value : null;

    private IReadOnlyList<double> Moving => [.. Series.Points.Zip(Series.Points.Skip(1), (a, b) => Math.Abs(b.Percent - a.Percent))];

    private IReadOnlyList<ChartPoint> Ranges => [.. Moving.Select((range, index) => new ChartPoint(
        Site.DayAndTime(Series.Points[index + 1].At), range, RangeLimits is { } limits && range > limits.Action.Upper ? Text["RangeOver"].Value : null))];

    /// <summary>From the checks that set the limits of the individuals.</summary>
    private ControlLimits? RangeLimits => Series.IsGiven || Series.Limits is null ? null : ControlLimits.OfMovingRanges([.. Moving.Take(ControlSeries.Baseline - 1)]);

    private string? Signal(int index)
    {
        var rules = Series.Signals.Where(signal => signal.Point == index).Select(signal => Text["Rule." + signal.Rule].Value).ToList();
        return rules.Count == 0 ? null : string.Join("; ", rules);
    }
}
