using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>No charge keeps all limits: which of them clash, and how near each can be reached while the others hold.</summary>
public sealed partial class PlanClashes
{
    [Parameter, EditorRequired]
    public PlannedCharge Planned { get; set; } = null!;
}
