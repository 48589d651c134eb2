using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>
/// Minutes since the end of the reaction, minutes left, and the minute at which pouring must stop.
/// </summary>
public sealed partial class PouringClock
{
    [Parameter, EditorRequired]
    public DateTimeOffset EndedAt { get; set; }

    /// <summary>Null for grey iron, and where the magnesium never is above its floor.</summary>
    [Parameter]
    public double? MinutesToFloor { get; set; }

    /// <summary>The server's now, from which the browser counts.</summary>
    [Parameter, EditorRequired]
    public DateTimeOffset Now { get; set; }

    private DateTimeOffset? StopAt => MinutesToFloor is { } minutes ? EndedAt.AddMinutes(minutes) : null;
}
