using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Reading;
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

    private string Age => IsNow && Now - Verdict!.At < TimeSpan.FromMinutes(1) ? Text["JustNow"] : Text[IsNow ? "Ago" : "Before", SpanText.Show(States, Now - Verdict!.At)];

    private static string Named(IReadOnlyList<Element> elements) => string.Join(", ", elements.Select(element => element.Symbol));
}
