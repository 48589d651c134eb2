using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Everything that was recorded about the heat, the newest first: what, who, when, and when it was entered if later.</summary>
public sealed partial class HeatTimeline
{
    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Inject]
    private ShopSite Site { get; set; } = null!;

    private string Words(TimelineRow row) => row.Kind switch
    {
        TimelineKind.Weighing => Weighing(Heat.Weighings.First(fact => fact.Origin == row.Origin)),
        TimelineKind.Temperature => Temperature(Heat.Temperatures.First(fact => fact.Origin == row.Origin)),
        TimelineKind.Sample => Text["Fact.Sample", Text["Kind." + Heat.Samples.First(fact => fact.Origin == row.Origin).Kind]],
        TimelineKind.PocketCard => OfLadle(row, ladle => ladle.Cards.Any(card => card.Origin == row.Origin), "Fact.PocketCard"),
        TimelineKind.Tap => OfLadle(row, ladle => ladle.Taps.Any(tap => tap.Origin == row.Origin), "Fact.Tap"),
        _ => OfLadle(row, ladle => ladle.Decisions.Any(decision => decision.Origin == row.Origin), "Fact.Decision"),
    };

    private string Weighing(WeighingView fact) => Text[fact.IntoBath ? "Fact.IntoBath" : "Fact.Weighing", MassText.Show(fact.Kg), fact.MaterialName];

    private string Temperature(TemperatureView fact) => fact.TreatedLadleId is { } id && Heat.Ladles.FirstOrDefault(ladle => ladle.Id == id) is { } of
        ? Text["Fact.LadleTemperature", NumberText.Show(fact.TemperatureC), of.Ordinal]
        : Text["Fact.Temperature", NumberText.Show(fact.TemperatureC)];

    private string OfLadle(TimelineRow row, Func<TreatedLadleView, bool> has, string words)
    {
        var ladle = Heat.Ladles.First(has);
        object detail = row.Kind switch
        {
            TimelineKind.PocketCard => MassText.Show(ladle.Cards.First(card => card.Origin == row.Origin).PlannedKg),
            TimelineKind.Tap => MassText.Show(ladle.Taps.First(tap => tap.Origin == row.Origin).Kg),
            _ => Text["Verdict." + ladle.Decisions.First(decision => decision.Origin == row.Origin).Verdict].Value,
        };
        return Text[words, ladle.Ordinal, detail];
    }
}
