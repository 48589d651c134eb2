using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>A fact in words, with where it came from or went to, why, and who corrected it.</summary>
public sealed partial class TimelineFact
{
    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public TimelineRow Row { get; set; } = null!;

    /// <summary>It stands under what corrects it.</summary>
    [Parameter]
    public bool IsFormer { get; set; }

    [Inject]
    private ShopSite Site { get; set; } = null!;

    private string Words => Row.Kind switch
    {
        TimelineKind.Weighing => Weighing(Heat.Weighings.First(IsIt)),
        TimelineKind.Temperature => Temperature(Heat.Temperatures.First(fact => fact.Origin == Row.Origin)),
        TimelineKind.Sample => Sample(Heat.Samples.First(fact => fact.Origin == Row.Origin)),
        TimelineKind.PocketCard => OfLadle(ladle => ladle.Cards.FirstOrDefault(card => card.Origin == Row.Origin), "Fact.PocketCard", card => MassText.Show(card.PlannedKg)),
        TimelineKind.Tap => OfLadle(ladle => ladle.Taps.FirstOrDefault(tap => tap.Origin == Row.Origin), "Fact.Tap", Tap),
        TimelineKind.CastingDecision => OfLadle(ladle => ladle.Decisions.FirstOrDefault(fact => fact.Origin == Row.Origin), "Fact.Decision", Decision),
        TimelineKind.Metal => Metal(Heat.Metal.First(fact => fact.Origin == Row.Origin)),
        TimelineKind.BurnDecision => Burn(Heat.BurnDecisions.First(fact => fact.Origin == Row.Origin)),
        TimelineKind.HeatCorrection => OfItself(Heat.OfItself.First(fact => fact.Origin == Row.Origin)),
        TimelineKind.HeatStep => Text["Step." + Heat.Steps.First(fact => fact.Origin == Row.Origin).State],
        _ => Step(Heat.LadleSteps.First(fact => fact.Origin == Row.Origin)),
    };

    /// <summary>What stands with a dip is how it was measured; with all else, why.</summary>
    private string Reason(string reason) =>
        Text[Row.Kind == TimelineKind.Metal && Heat.Metal.First(fact => fact.Origin == Row.Origin).Kind is FurnaceMetalKind.Dipped ? "MeasuredBy" : "Because", reason];

    private bool IsIt(WeighingView fact) => fact.Origin == Row.Origin;

    private string Weighing(WeighingView fact) => Text[fact.IntoBath ? "Fact.IntoBath" : "Fact.Weighing", MassText.Show(fact.Kg), fact.Lot is { } lot ? $"{fact.MaterialName}, {Text["LotOf", lot]}" : fact.MaterialName];

    private string Temperature(TemperatureView fact) => fact.TreatedLadleId is { } id && Heat.Ladles.FirstOrDefault(ladle => ladle.Id == id) is { } of
        ? Text["Fact.LadleTemperature", TemperatureText.Show(fact.TemperatureC), of.Ordinal]
        : Text["Fact.Temperature", TemperatureText.Show(fact.TemperatureC)];

    private string Sample(SampleView fact)
    {
        var words = Text["Fact.Sample", Text["Kind." + fact.Kind]].Value;
        var named = fact.CoinNumber is { } coin ? $"{words} {coin}" : words;
        var percents = string.Join(", ", fact.Means.Select(mean => $"{mean.Element.Symbol}\u00a0{BurnTable.BelowMark(fact, mean.Element)}{PercentText.Show(mean.Element, mean.Percent)}"));
        return percents.Length > 0 ? $"{named} ({percents}\u00a0%)" : named;
    }

    private string Tap(TapView tap) => tap.FromTreatedLadleId is not null ? Text["FromALadle"].Value : tap.TemperatureC is { } degrees ? $"{MassText.Show(tap.Kg)}, {TemperatureText.Show(degrees)}" : MassText.Show(tap.Kg);

    private string Decision(CastingDecisionView decision) =>
        Text[decision.FollowsCorrection ? "Verdict.HeldAgain" : "Verdict." + decision.Verdict].Value + (decision.TestUnit is { } unit ? $" ({unit})" : "");

    private string OfItself(HeatCorrectionView fact) => string.Join(", ", new[]
    {
        fact.GradeCode == fact.FormerGradeCode ? null : Text["Fact.Grade", fact.GradeCode, fact.FormerGradeCode].Value,
        fact.StartedAt == fact.FormerStartedAt ? null : Text["Fact.Started", Site.DayAndTime(fact.StartedAt), Site.DayAndTime(fact.FormerStartedAt)].Value,
        fact.ClosedAt == fact.FormerClosedAt ? null : Text["Fact.Ended", Site.DayAndTime(fact.ClosedAt!.Value), Site.DayAndTime(fact.FormerClosedAt!.Value)].Value,
        fact.IsOtherFurnace ? Text["Fact.Furnace", fact.FurnaceName, fact.FormerFurnaceName].Value : null,
        fact is { HeelKg: { } heel, FormerHeelKg: { } former } && heel != former ? Text["Fact.Heel", MassText.ShowFully(heel), MassText.ShowFully(former)].Value : null,
    }.OfType<string>());

    private string Metal(MetalView fact) => fact.Kind switch
    {
        FurnaceMetalKind.Dipped when fact is { LevelKg: 0, Origin: { Reason: null, CorrectsId: null } } => Text["Fact.Emptied", MetalText.Signed(fact.Kg)],
        FurnaceMetalKind.Dipped when fact.LevelKg is { } level => Text[
            "Fact.Dipped", fact.PlusMinusKg is { } off ? Text["Within", MassText.Show(level), MassText.Show(off)] : MassText.Show(level), MetalText.Signed(fact.Kg)],
        FurnaceMetalKind.Dipped => Text["Fact.DippedBy", MetalText.Signed(fact.Kg)],
        FurnaceMetalKind.Pigged => Text["Fact.Pigged", MassText.Show(-fact.Kg)],
        _ => Text["Fact.PouredBack", MassText.Show(fact.Kg)],
    };

    private string Burn(BurnDecisionView fact) => Text[
        fact.SetAside ? "Fact.SetAside" : "Fact.TakenBack", fact.Ordinal,
        Heat.Samples.FirstOrDefault(sample => sample.Id == fact.SampleId) is { } of ? Text["Kind." + of.Kind].Value : ""];

    private string Step(LadleStepView fact) =>
        Text["LadleStep." + fact.State, Heat.Ladles.First(ladle => ladle.Id == fact.TreatedLadleId).Ordinal];

    private string OfLadle<TFact>(Func<TreatedLadleView, TFact?> find, string words, Func<TFact, string> detail)
        where TFact : class
    {
        var ladle = Heat.Ladles.First(of => find(of) is not null);
        return Text[words, ladle.Ordinal, detail(find(ladle)!)];
    }
}
