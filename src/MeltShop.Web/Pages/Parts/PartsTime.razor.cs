using MeltShop.Metallurgy.Statistics;
using MeltShop.Web.Components.Charts;
using MeltShop.Web.Components.Ribbon;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Parts;

/// <summary>Clocks, ribbon and charts in their states. The results are invented.</summary>
public sealed partial class PartsTime
{
    private static readonly double[] Results =
    [
        3.57, 3.60, 3.55, 3.58, 3.61, 3.56, 3.59, 3.57, 3.54, 3.58, 3.60, 3.56, 3.70, 3.59, 3.57, 3.55, 3.58, 3.60, 3.59, 3.56, 3.57, 3.61, 3.58, 3.55,
    ];

    private readonly ControlLimits limits = ControlLimits.FromIndividuals([.. Results.Where(result => result < 3.7)])!;
    private readonly ControlLimits ranges;
    private DateTimeOffset now;

    public PartsTime()
    {
        var centre = Moving.Average();
        ranges = new(centre, centre * (ControlChartConstants.RangeUpperFactor(2) - 1) / 3);
    }

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    private IReadOnlyList<RibbonStep> Steps =>
    [
        new(Text["First"], RibbonStanding.Done, 52), new(Text["Second"], RibbonStanding.Now, 7), new(Text["Third"], RibbonStanding.Later),
    ];

    private IReadOnlyList<ChartPoint> Points =>
    [
        .. Results.Select((result, index) => new ChartPoint(
            Text["Row", index + 1],
            result,
            RunRules.Find(Results, limits).Any(found => found.Result == index) ? Text["Signal"].Value : null,
            index switch { 4 => Text["ReasonLining"].Value, 12 => Text["ReasonReturns"].Value, _ => null })),
    ];

    private static IEnumerable<double> Moving => Results.Zip(Results.Skip(1), (a, b) => Math.Abs(b - a));

    /// <summary>The moving ranges of the results, whose upper limit alone says anything.</summary>
    private IReadOnlyList<ChartPoint> Ranges => [.. Moving.Select((range, index) => new ChartPoint(
        Text["Row", index + 2], range, range > ranges.Action.Upper ? Text["Signal"].Value : null))];

    private IReadOnlyList<ChartPoint> Many => [.. Enumerable.Range(1, 5).SelectMany(_ => Points).Select((point, index) => point with { Label = Text["Row", index + 1], Reason = null })];

    protected override void OnInitialized() => now = Clock.GetUtcNow();
}
