using MeltShop.Charging.Plans;
using MeltShop.Charging;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>How much of each bounded kind is in the charge, and how much of each room it takes.</summary>
public sealed partial class PlanRooms
{
    [Parameter, EditorRequired]
    public PlannedCharge Planned { get; set; } = null!;

    /// <summary>Names of materials by code.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyDictionary<string, string> Names { get; set; } = new Dictionary<string, string>();

    private ChargeEvaluation Outcome { get; set; } = null!;

    protected override void OnParametersSet() => Outcome = Planned.ByHand?.Checked ?? ChargeCheck.Of(Planned.Problem, Planned.Kilograms);
}
