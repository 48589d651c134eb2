using MeltShop.Records.Reading.Floor;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Floor;

/// <summary>A ladle under treatment and the minute at which its magnesium is predicted to be at the floor.</summary>
public sealed partial class LadleCard
{
    [Parameter, EditorRequired]
    public FloorLadle Ladle { get; set; } = null!;

    [Parameter, EditorRequired]
    public DateTimeOffset Now { get; set; }

    /// <summary>Null before the end of the reaction, and for grey iron, which has no magnesium to fade.</summary>
    private DateTimeOffset? StopAt => Ladle is { ReactionEndedAt: { } end, MinutesToFloor: { } minutes } ? end.AddMinutes(minutes) : null;
}
