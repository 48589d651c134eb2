using System.Globalization;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Clock;

/// <summary>
/// Minutes since an instant and minutes left until another. It ticks in the browser from the server's instants, so it goes on without a
/// connection, and neither the clock nor the zone of the tablet matters.
/// </summary>
public sealed partial class LadleClock
{
    /// <summary>What is timed.</summary>
    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    [Parameter, EditorRequired]
    public DateTimeOffset Since { get; set; }

    /// <summary>When it must be over; null where there is no such minute.</summary>
    [Parameter]
    public DateTimeOffset? Until { get; set; }

    /// <summary>When it may be over already, by the band; null where there is no band.</summary>
    [Parameter]
    public DateTimeOffset? Early { get; set; }

    /// <summary>What it counts from, in words; from the end of the reaction where nothing is said.</summary>
    [Parameter]
    public string? SinceWords { get; set; }

    /// <summary>To be read from three metres, with the signals that the device's user chose.</summary>
    [Parameter]
    public bool IsLarge { get; set; }

    /// <summary>The server's now, from which the browser counts.</summary>
    [Parameter, EditorRequired]
    public DateTimeOffset Now { get; set; }

    private static string? Milliseconds(DateTimeOffset? instant) => instant?.ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture);
}
