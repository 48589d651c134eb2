using System.Globalization;
using MeltShop.Operations;
using MeltShop.Operations.Correcting;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>
/// Puts a fact right or moves it to the heat that it belongs to. What was typed stays where it is refused; where somebody else was faster that is said
/// first, and what is saved then corrects theirs.
/// </summary>
public sealed partial class FactCorrection
{
    private IReadOnlyList<NearbyHeat> heats = [];
    private IReadOnlyList<MaterialView> yard = [];
    private IReadOnlyList<InstrumentView> instruments = [];
    private CorrectionDraft? draft;
    private TimelineRow seen = null!;
    private bool isTold;

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public TimelineRow Row { get; set; } = null!;

    /// <summary>Corrected, or left as it was.</summary>
    [Parameter, EditorRequired]
    public EventCallback Done { get; set; }

    [Inject]
    private IServiceProvider Services { get; set; } = null!;

    [Inject]
    private NearbyHeats Nearby { get; set; } = null!;

    [Inject]
    private YardPage Yard { get; set; } = null!;

    [Inject]
    private InstrumentsPage Instruments { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private CorrectionDraft? Draft => draft;

    private bool IsDip => seen.Kind == TimelineKind.Metal && Draft?.PlusMinus is not null;

    private IEnumerable<Choice> HeatChoices => heats.Select(heat => new Choice(CorrectionDraft.Id(heat.Id), $"{heat.Number}, {heat.FurnaceName}"));

    private IEnumerable<Choice> LadleChoices => heats.FirstOrDefault(heat => CorrectionDraft.Id(heat.Id) == Draft?.Heat?.Value) is { } chosen
        ? chosen.Ladles.Select(ladle => new Choice(CorrectionDraft.Id(ladle.Id), Text["LadleOf", ladle.Ordinal])).Prepend(new("", Text["NoLadleBath"]))
        : [];

    private IEnumerable<Choice> InstrumentChoices => instruments.Select(instrument => new Choice(CorrectionDraft.Id(instrument.Id), instrument.Name));

    private IEnumerable<Choice> FractureChoices => [new(bool.FalseString, Text["Fracture.White"]), new(bool.TrueString, Text["Fracture.Grey"])];

    /// <summary>A coin is no cup and a cup no coin.</summary>
    private IEnumerable<Choice> KindChoices => (Draft?.Burns is null ? SampleKinds.OfFigures : Enum.GetValues<SampleKind>().Except(SampleKinds.OfFigures)).Select(kind => new Choice(kind.ToString(), Text["Kind." + kind]));

    private IEnumerable<Choice> MaterialChoices => yard.Select(material => new Choice(CorrectionDraft.Id(material.Id), material.Name));

    private IReadOnlyList<LotView>? Lots => yard.FirstOrDefault(material => CorrectionDraft.Id(material.Id) == Draft?.Material?.Value)?.Lots;

    private IEnumerable<Choice> BathChoices => [new(bool.FalseString, Text["WithTheCharge"]), new(bool.TrueString, Text["IntoTheBath"])];

    private IEnumerable<Choice> VerdictChoices => Enum.GetValues<CastingVerdict>()
        .Where(verdict => verdict != CastingVerdict.Downgrade).Select(verdict => new Choice(verdict.ToString(), Text["Verdict." + verdict]));

    protected override void OnInitialized() => seen = Row;

    protected override void OnParametersSet()
    {
        if (isTold && Row.Origin.FactId != seen.Origin.FactId) (seen, isTold) = (Row, false);
    }

    protected override async Task OnInitializedAsync()
    {
        var begun = CorrectionDraft.Of(Heat, Row);
        if (begun.Heat is not null) heats = await Nearby.Load(Heat.Heat.Id);
        if (begun.Material is not null) yard = await Yard.All();
        // Those in use, and the one that stands there.
        if (begun.Instrument is { } entry) instruments = [.. (await Instruments.Load(CancellationToken.None)).Where(i => i.IsActive || CorrectionDraft.Id(i.Id) == entry.Value)];
        draft = begun;
    }

    /// <summary>A ladle of another heat is none of this one's.</summary>
    private void HeatChosen() => Draft!.Ladle?.Showing("");

    /// <summary>A lot of another material is none of this one's.</summary>
    private void MaterialChosen() => Draft!.Lot!.Showing("");

    private async Task Save()
    {
        var outcome = await HandingIn.Send(Draft!.Form, made => Run(made, Draft!), Draft.Burns is { } burns ? burns.Check : null);
        if (outcome?.Succeeded == true) await Done.InvokeAsync();
        isTold = outcome?.Findings.Any(finding => finding.Code == "fact.corrected") == true;
        OnParametersSet();
    }

    private Task<Outcome<long>> Run(EntryMade made, CorrectionDraft with)
    {
        var (id, reason) = (seen.Origin.FactId, with.Reason.Value!);
        DateTimeOffset? at = with.Earlier?.Value is { } minutes and not 0 ? seen.Origin.ObservedAt.AddMinutes(-minutes) : null;
        return seen.Kind switch
        {
            TimelineKind.Weighing => The<CorrectWeighing>().Run(made.By, new(
                made.Key, made.ObservedAt, id, Id(with.Heat)!.Value, Id(with.Material)!.Value, with.Kg!.Needed, bool.Parse(with.IntoBath!.Value!), reason, at)
            {
                Lot = with.Lot!.Value ?? "",
            }),
            TimelineKind.Temperature => The<CorrectTemperature>().Run(made.By, new(
                made.Key, made.ObservedAt, id, Id(with.Heat)!.Value, Id(with.Ladle), with.Degrees!.Needed, reason, at)),
            TimelineKind.Sample => The<CorrectSample>().Run(made.By, new(
                made.Key, made.ObservedAt, id, Id(with.Heat)!.Value, Id(with.Ladle), Enum.Parse<SampleKind>(with.SampleKind!.Value!), with.Burns?.Changed(),
                with.Coin!.Value, with.Remarks!.Value, reason, at, with.Fracture?.Value is { } fracture ? bool.Parse(fracture) : null, with.ChangedFigures(Heat.Samples.First(sample => sample.Origin.FactId == seen.Origin.FactId)), Id(with.Instrument))),
            TimelineKind.Tap => The<CorrectTap>().Run(made.By, new(made.Key, made.ObservedAt, id, with.Kg!.Needed, with.Degrees!.Value, reason, at)),
            TimelineKind.Metal => The<CorrectMetal>().Run(made.By, new(made.Key, made.ObservedAt, id, with.Kg!.Needed, with.PlusMinus?.Value, reason, at)),
            _ => The<CorrectDecision>().Run(made.By, new(made.Key, made.ObservedAt, id, Enum.Parse<CastingVerdict>(with.Verdict!.Value!), Seen(), reason) { Password = with.Password!.Value }),
        };
    }

    /// <summary>The last sample of the ladle's last metal: a release is made by it.</summary>
    private long? Seen()
    {
        var ladle = Heat.Ladles.First(of => of.Decisions.Any(decision => decision.Origin.FactId == seen.Origin.FactId));
        return Heat.Samples.Where(sample => sample.TreatedLadleId == ladle.Id && sample.Kind == SampleKind.LastMetal && !sample.Origin.IsCorrected)
            .MaxBy(sample => (sample.Origin.ObservedAt, sample.Id))?.Id;
    }

    private TOperation The<TOperation>() where TOperation : notnull => Services.GetRequiredService<TOperation>();

    private static long? Id(TextEntry? entry) => entry?.Value is { } text ? long.Parse(text, CultureInfo.InvariantCulture) : null;
}
