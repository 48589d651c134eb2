using System.Globalization;
using MeltShop.Operations;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>
/// Everything that was recorded about the heat, the newest first: what, who, when, and when it was entered if later. What was corrected
/// stands struck under its correction, with who, when and why.
/// </summary>
public sealed partial class HeatTimeline
{
    private (TimelineKind Kind, long Id)? opened;

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    /// <summary>Who acts; null where nothing can be corrected from here.</summary>
    [Parameter]
    public Acting? Acting { get; set; }

    [Inject]
    private ShopSite Site { get; set; } = null!;

    [Inject]
    private IServiceProvider Services { get; set; } = null!;

    private bool MayCorrect(TimelineRow row) => Acting is { } acting && Heat.KnownAt is null && !row.Origin.IsCorrected && acting.HoldsAny(CorrectionRights.Of(Services, Heat, row));

    /// <summary>The page as it was known just before a correction was entered.</summary>
    private string Before(Origin origin) =>
        $"/heats/{Heat.Heat.Id}?known={Uri.EscapeDataString(origin.EnteredAt.AddTicks(-TimeSpan.TicksPerMicrosecond).ToString("O", CultureInfo.InvariantCulture))}";

    /// <summary>02:35 of the next day stands above 19:45, and would seem to be before it.</summary>
    private bool IsOfAnotherDay(Origin origin) => Site.Day(origin.ObservedAt) != Site.Day(Heat.Heat.StartedAt);

    private void Toggle(TimelineEntry entry) => opened = opened == (entry.Row.Kind, entry.FirstId) ? null : (entry.Row.Kind, entry.FirstId);

    private void Close() => opened = null;

    private IReadOnlyList<StaleNote> Stale(TimelineRow row) => row.Kind switch
    {
        TimelineKind.PocketCard => Heat.Ladles.SelectMany(ladle => ladle.Cards).First(card => card.Origin == row.Origin).Stale,
        TimelineKind.CastingDecision => Heat.Ladles.SelectMany(ladle => ladle.Decisions).First(decision => decision.Origin == row.Origin).Stale,
        _ => [],
    };
}
