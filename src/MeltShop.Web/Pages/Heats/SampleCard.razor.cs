using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Limits;
using Microsoft.AspNetCore.Components;
using LimitVerdict = MeltShop.Web.Components.Limits.LimitVerdict;

namespace MeltShop.Web.Pages.Heats;

/// <summary>One coin: the means against the furnace window, then the burns themselves.</summary>
public sealed partial class SampleCard
{
    [Parameter, EditorRequired]
    public SampleView Sample { get; set; } = null!;

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool MaySetAside { get; set; }

    private IReadOnlyList<SampleVerdict> Verdicts { get; set; } = [];

    /// <summary>Of the burns that count, in their order.</summary>
    private IReadOnlyList<BurnEvaluation> Evaluations { get; set; } = [];

    private int Counting => Sample.Burns.Count(burn => !burn.SetAside);

    private IReadOnlyList<string> Outside => Named(LimitVerdict.Low, LimitVerdict.High);

    private IReadOnlyList<string> Close => Named(LimitVerdict.Close);

    private IReadOnlyList<string> Missing => Named(LimitVerdict.Unknown);

    protected override void OnParametersSet()
    {
        Verdicts = SampleVerdict.Of(Sample, Heat.Grade);
        Evaluations = ReplicateBurns.Evaluate(
            [.. Sample.Burns.Where(burn => !burn.SetAside).Select(burn => Analysis.Of(burn.Readings.Select(reading => KeyValuePair.Create(reading.Element, reading.Percent))))]);
    }

    private IReadOnlyList<string> Named(params LimitVerdict[] standing) =>
        [.. Verdicts.Where(verdict => standing.Contains(verdict.Verdict)).Select(verdict => verdict.Window.Quantity)];
}
