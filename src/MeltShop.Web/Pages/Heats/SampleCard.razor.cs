using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>One sample: the means against the window of its step, then the burns themselves; of a cup or a wedge its figures.</summary>
public sealed partial class SampleCard
{
    [Parameter, EditorRequired]
    public SampleView Sample { get; set; } = null!;

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool MaySetAside { get; set; }

    private IReadOnlyList<QuantityJudgement> Judged { get; set; } = [];

    /// <summary>Of the burns that count, in their order.</summary>
    private IReadOnlyList<BurnEvaluation> Evaluations { get; set; } = [];

    private int Counting => Sample.Burns.Count(burn => !burn.SetAside);

    private string Source => string.Join("; ", new[]
    {
        Sample.Instrument?.Name ?? Text["NoInstrument"].Value,
        Sample.IsMeanOnly ? Text["IsMean"].Value : null,
        Sample.GreyFracture ? Text["Fracture.Grey"].Value : null,
    }.OfType<string>());

    /// <summary>Where the thin bars come from.</summary>
    private string Scatter =>
        Judged.Any(of => of.IsSet) ? Text["ScatterSet", Counting]
        : Sample.IsMeanOnly ? Text["ScatterOfMean"]
        : Text[Counting < 3 ? "ScatterUnknown" : "ScatterKnown", Counting];

    protected override void OnParametersSet()
    {
        Judged = QuantityJudgement.Of(Sample, Heat.Grade);
        Evaluations = ReplicateBurns.Evaluate(
            [.. Sample.Burns.Where(burn => !burn.SetAside).Select(burn => Analysis.Of(burn.Readings.Select(reading => KeyValuePair.Create(reading.Element, reading.Percent))))],
            Sample.Instrument?.Repeatabilities());
    }
}
