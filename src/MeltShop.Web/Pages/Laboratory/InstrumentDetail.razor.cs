using MeltShop.Metallurgy.Statistics;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>An instrument: what it measures, its checks on reference materials, and the heats that a bad check throws doubt on.</summary>
public sealed partial class InstrumentDetail
{
    /// <summary>More charts than these are a long page.</summary>
    private const int MostWithoutLinks = 2;

    [Parameter]
    public long Id { get; set; }

    /// <summary>Rules beside the usual ones.</summary>
    [SupplyParameterFromQuery(Name = "rules")]
    public string? RulesInAddress { get; set; }

    [Inject]
    private InstrumentPage Page { get; set; } = null!;

    [Inject]
    private SetInstrument Set { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    [Inject]
    private RecordControlSample Record { get; set; } = null!;

    private IReadOnlySet<RunRule> Rules => ChartRules.Read(RulesInAddress);

    private IReadOnlyList<ControlSeries> Charts => ControlSeries.Of(View!.Samples, View.References, View.State.Instrument, Rules);

    /// <summary>The charts whose last point breaks a rule: seen without scrolling through all of them.</summary>
    private IReadOnlyList<string> Broken =>
        [.. Charts.Where(IsBroken).Select(series => Text["ChartOf", series.Certified.Element.Symbol, series.Reference.Name].Value)];

    private static bool IsBroken(ControlSeries series) => series.Signals.Any(signal => signal.Point == series.Points.Count - 1);

    /// <summary>The place on this page, which has a base that a bare anchor would lead away to.</summary>
    private string To(ControlSeries series) => $"{new Uri(Addresses.Uri).PathAndQuery}#{ControlCharts.Anchor(series)}";

    /// <summary>The element alone where all were read on one material.</summary>
    private string Linked(ControlSeries series) => Charts.DistinctBy(one => one.Reference.Id).Skip(1).Any()
        ? Text["ChartOf", series.Certified.Element.Symbol, series.Reference.Name] : series.Certified.Element.Symbol;

    protected override Task<InstrumentDetailView?> Read(CancellationToken ct) => Page.Load(Id, ct);

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Instrument or ChangeKind.Sample or ChangeKind.Heat or ChangeKind.Grade;

    private static string Shown(double? figure, string unit) => figure is { } value ? UnitText.Of(NumberText.Show(value), unit) : "–";
}
