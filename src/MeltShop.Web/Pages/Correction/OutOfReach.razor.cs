using MeltShop.Charging.Plans;
using MeltShop.Operations.Correcting;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Correction;

/// <summary>No addition brings the bath into its window: what clashes, and how near each gets.</summary>
public sealed partial class OutOfReach
{
    [Parameter, EditorRequired]
    public ChargePlan Plan { get; set; } = null!;

    /// <summary>What saving it would take.</summary>
    [Parameter, EditorRequired]
    public WaysIn Ways { get; set; } = null!;

    [Parameter, EditorRequired]
    public Func<string, string> NameOf { get; set; } = null!;

    private string Minutes(OutOfReachWay way) => way.Minutes is { } minutes ? Text["WayMinutes", NumberText.Show(minutes, 1)] : Text["WayMinutesUnknown"];

    private string Missing(OutOfReachWay way) => string.Join(", ", way.Short.Select(s => Text["WayShort", MassText.Show(s.Value), NameOf(s.Key)].Value));
}
