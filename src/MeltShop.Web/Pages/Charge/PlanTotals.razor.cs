using MeltShop.Charging.Plans;
using MeltShop.Operations.Charging;
using MeltShop.Web.Components.Fields;
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

    /// <summary>Why it is not proven; a plan of before that was kept had only its time.</summary>
    private SearchEnd End => Plan.End is SearchEnd.Proven ? SearchEnd.OutOfTime : Plan.End;

    /// <summary>Rounded up: what is told as the most may not be less than it is.</summary>
    private string? Gap => Plan.GapPercent is { } gap
        ? Text[Plan.Costs is { UseUpBonus: 0, Nearness: 0 } ? "AtMostCheaper" : "AtMostBetter", NumberText.Show(Math.Ceiling(100 * gap) / 100, 2)].Value : null;

    /// <summary>Inside on average, and not surely so: no plan is called inside a limit that its own numbers put in doubt.</summary>
    private IReadOnlyList<string> TooClose => [.. Plan.Told(Planned.Problem.Limits).Where(limit => limit.IsTooCloseToTell()).Select(limit => limit.Quantity)];
}
