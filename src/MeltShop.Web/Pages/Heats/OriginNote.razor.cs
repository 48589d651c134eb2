using MeltShop.Records.Reading;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>When something was observed and by whom; when it was entered where that was later.</summary>
public sealed partial class OriginNote
{
    /// <summary>Sooner than this it was entered as it happened.</summary>
    private static readonly TimeSpan AtOnce = TimeSpan.FromMinutes(1);

    [Parameter, EditorRequired]
    public Origin Origin { get; set; } = null!;

    /// <summary>Leaves out when it was observed, where that stands beside it already.</summary>
    [Parameter]
    public bool IsTimeShown { get; set; } = true;

    [Inject]
    private ShopSite Site { get; set; } = null!;

    /// <summary>With its day where that is another one: 11:28 of the next day is not before 16:48.</summary>
    private string Entered => Site.Day(Origin.EnteredAt) == Site.Day(Origin.ObservedAt) ? Site.Time(Origin.EnteredAt) : Site.DayAndTime(Origin.EnteredAt);

    private string Words => string.Join(", ", new[]
    {
        IsTimeShown ? Site.Time(Origin.ObservedAt) : null,
        Origin.Person,
        Origin.EnteredAt - Origin.ObservedAt < AtOnce ? null : Text["EnteredAt", Entered].Value,
    }.OfType<string>());
}
