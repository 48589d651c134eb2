using System.Globalization;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.History;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Charts;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
using MeltShop.Web.Pages.History;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>Trend and control chart of an element or a derived quantity by grade and furnace, on the last thousand samples; filter, place and rules stay in the address.</summary>
public sealed partial class TrendList
{
    private const string Treated = "poured", Furnace = "furnace";

    private readonly TextEntry quantity, step, grade, furnace, instrument;

    public TrendList()
    {
        var form = new EntryForm();
        (quantity, step, grade, furnace, instrument) =
            (form.Choice("quantity", isRequired: true), form.Choice("step", isRequired: true), form.Choice("grade"), form.Choice("furnace"), form.Choice("instrument"));
    }

    [SupplyParameterFromQuery(Name = "quantity")]
    public string? QuantityInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "step")]
    public string? StepInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "grade")]
    public long? GradeInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "furnace")]
    public long? FurnaceInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "instrument")]
    public long? InstrumentInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "after")]
    public string? PlaceInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "rules")]
    public string? RulesInAddress { get; set; }

    [Inject]
    private TrendPage Page { get; set; } = null!;

    [Inject]
    private HistoryChoices Choices { get; set; } = null!;

    [Inject]
    private GradesPage Grades { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    private TrendFilter Filter => new(
        TrendQuantities.Find(QuantityInAddress, StepInAddress == Treated), GradeInAddress, FurnaceInAddress, StepInAddress == Treated, InstrumentInAddress);

    private IReadOnlySet<RunRule> Rules => ChartRules.Read(RulesInAddress);

    private IEnumerable<Choice> Quantities => TrendQuantities.Choices(LimitText, Filter.Treated);

    /// <summary>What a coin has to measure to be on the chart, where that is more than one element.</summary>
    private string Needs => Filter.Quantity.Needed.Count > 1 ? " " + Text["Needs", string.Join(", ", Filter.Quantity.Needed)] : "";

    private string Unit => QuantityText.Unit(Filter.Quantity.Name);

    private IEnumerable<Choice> Steps => [new(Furnace, Text["Step.Furnace"]), new(Treated, Text["Step.Poured"])];

    private string Title => Text["TrendOf", QuantityText.Name(LimitText, Filter.Quantity.Name), View!.Grade?.Code ?? Text["AllGrades"].Value];

    private WindowView? Window => View!.Grade?.At(Filter.Treated ? WindowStage.Poured : WindowStage.Furnace).FirstOrDefault(window => window.Quantity == Filter.Quantity.Name);

    private IEnumerable<Choice> Instruments => View!.Trend.Instruments.Select(one => new Choice(Name(one.Id)!, one.Name ?? Text["NoInstrument"]));

    private bool IsMixed => View!.Grade is null || FurnaceInAddress is null;

    /// <summary>Two instruments differ by more than either scatters.</summary>
    private bool IsOfSeveral => View!.Trend.Points.DistinctBy(point => point.InstrumentId).Skip(1).Any();

    /// <summary>Neither grades nor furnaces nor instruments are mixed under one pair of limits: null until one of each is chosen.</summary>
    private TrendControl? Control => IsMixed || IsOfSeveral ? null : TrendControl.Of(View!.Trend.Points, Rules);

    private ControlLimits? Limits { get; set; }

    private ControlLimits? RangeLimits { get; set; }

    /// <summary>From one heat's first coin to the next; none without limits.</summary>
    private IReadOnlyList<ChartPoint> Ranges { get; set; } = [];

    private string LimitWords { get; set; } = "";

    private IReadOnlyList<ChartPoint> Points { get; set; } = [];

    private string HitRate => View!.Hits.Percent is { } percent
        ? Text["HitRate", NumberText.Show(percent, 0), View.Hits.Hits, View.Hits.Judged, View.Hits.Unjudged] : Text["NoHitRate", View.Hits.Unjudged];

    private string Export => $"/laboratory/trends.csv{new Uri(Addresses.Uri).Query}";

    protected override async Task<TrendContent?> Read(CancellationToken ct)
    {
        quantity.Showing(Filter.Quantity.Name);
        step.Showing(Filter.Treated ? Treated : Furnace);
        grade.Showing(Name(GradeInAddress));
        furnace.Showing(Name(FurnaceInAddress));
        instrument.Showing(Name(InstrumentInAddress));
        var trend = await Page.Load(Filter, HistoryAddress.ReadPlace(PlaceInAddress), ct);
        var choices = await Choices.Load(ct);
        var grades = await Grades.All(ct);
        return new(
            trend, FirstSampleHits.Of(trend.Firsts, grades, trend.Changes), grades.FirstOrDefault(one => one.Id == GradeInAddress),
            [.. choices.Grades.Select(Line)], [.. choices.Furnaces.Select(Line)]);
    }

    protected override void Arrived(TrendContent view)
    {
        var control = Control;
        Limits = control?.Limits;
        LimitWords = control is null ? Text[IsMixed ? "MixedGrades" : "MixedInstruments"] : Text[(Limits is null ? "FewFirsts" : "Firsts") + (Filter.Treated ? "OfLadles" : Limits is null ? "" : "Only"), control.Firsts.Count, ControlSeries.Baseline];
        RangeLimits = Limits is null ? null : ControlLimits.OfMovingRanges(control!.Moving);
        Points =
        [
            .. view.Trend.Points.Select(point => new ChartPoint(point.HeatNumber, point.Value, Signal(control, point), point.Remarks) { Address = $"/heats/{Name(point.HeatId)}" }),
        ];
        Ranges = RangeLimits is null ? [] : [.. control!.Moving.Zip(control.Firsts.Skip(1), (range, point) => new ChartPoint(
            point.HeatNumber, range, range > RangeLimits.Action.Upper ? Text["RangeOver"].Value : null) { Address = $"/heats/{Name(point.HeatId)}" })];
    }

    private string? Signal(TrendControl? control, TrendPoint point) =>
        control?.Signals[point.SampleId].Select(rule => Text["Rule." + rule].Value).ToList() is { Count: > 0 } rules ? string.Join("; ", rules) : null;

    protected override bool Concerns(ChangeNotice change) => 
        change.Kind is ChangeKind.Sample or ChangeKind.Heat or ChangeKind.Grade or ChangeKind.Furnace or ChangeKind.Instrument;

    private void Ask() => Addresses.NavigateTo(Addresses.GetUriWithQueryParameters(new Dictionary<string, object?>
    {
        ["quantity"] = quantity.Value, ["step"] = step.Value, ["grade"] = grade.Value, ["furnace"] = furnace.Value, ["instrument"] = instrument.Value, ["after"] = null,
    }));

    private static Choice Line(NamedRow row) => new(Name(row.Id)!, row.Name);

    private static string? Name(long? id) => id?.ToString(CultureInfo.InvariantCulture);
}
