using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>What the last control sample said of an instrument, and how long before a moment that was.</summary>
public sealed partial class CheckTag
{
    /// <summary>Null where the instrument was never checked before.</summary>
    [Parameter, EditorRequired]
    public ControlVerdict? Verdict { get; set; }

    /// <summary>The moment that it is held against: now, or when a coin was taken.</summary>
    [Parameter, EditorRequired]
    public DateTimeOffset Now { get; set; }

    /// <summary>The moment is now: told as so long ago.</summary>
    [Parameter]
    public bool IsNow { get; set; }

    private string Age => Text[IsNow ? "Ago" : "Before", Span];

    private string Span => (Now - Verdict!.At).TotalMinutes switch
    {
        < 90 and var minutes => Text["Minutes", NumberText.Show(Math.Max(0, Math.Round(minutes)))],
        < 2880 and var minutes => Text["Hours", NumberText.Show(Math.Round(minutes / 60))],
        var minutes => Text["Days", NumberText.Show(Math.Round(minutes / 1440))],
    };

    private static string Named(IReadOnlyList<Element> elements) => string.Join(", ", elements.Select(element => element.Symbol));
}
