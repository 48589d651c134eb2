using MeltShop.Charging.Plans;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What the charge costs, how much it makes, and the iron that it should give.</summary>
public sealed partial class PlanTotals
{
    [Parameter, EditorRequired]
    public PlannedCharge Planned { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    private ChargePlan Plan => Planned.Plan;

    /// <summary>Inside on average, and not surely so: no plan is called inside a limit that its own numbers put in doubt.</summary>
    private IReadOnlyList<string> TooClose => [.. Plan.Limits.Where(limit => limit.IsTooCloseToTell()).Select(limit => limit.Quantity)];
}
