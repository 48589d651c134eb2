using MeltShop.Records.Reading.Laboratory;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>The heats that a bad check throws doubt on; where a good check closed the stretch and it holds none, there is no card. They stay listed when a later check is good: what was measured before it stays doubtful.</summary>
public sealed partial class DoubtedCard
{
    [Parameter, EditorRequired]
    public DoubtedTime Doubt { get; set; } = null!;

    [Parameter, EditorRequired]
    public IReadOnlyList<MeasuredHeat> Heats { get; set; } = [];

    /// <summary>There are more of them.</summary>
    [Parameter, EditorRequired]
    public bool IsMore { get; set; }

    /// <summary>Of the instrument.</summary>
    [Parameter, EditorRequired]
    public string Code { get; set; } = "";

    private string Span(MeasuredHeat heat)
    {
        var (first, last) = (Site.DayAndTime(heat.First), Site.DayAndTime(heat.Last));
        return first == last ? Text["SamplesAt", heat.Samples, first] : Text["SamplesOf", heat.Samples, first, last];
    }

    private string Words => (Doubt.Since, Doubt.Until) switch
    {
        ({ } since, { } until) => Text["DoubtedBetween", Elements, Site.DayAndTime(since), Site.DayAndTime(until)],
        ({ } since, null) => Text["DoubtedSince", Elements, Site.DayAndTime(since)],
        (null, { } until) => Text["DoubtedBefore", Elements, Site.DayAndTime(until)],
        _ => Text["DoubtedAll", Elements],
    };

    private string Elements => string.Join(", ", Doubt.Elements.Select(element => element.Symbol));
}
