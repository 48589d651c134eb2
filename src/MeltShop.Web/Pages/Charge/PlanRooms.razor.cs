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

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    /// <summary>With costs, for the metallurgist.</summary>
    [Parameter]
    public bool IsWhyShown { get; set; }

    private ChargeEvaluation Outcome { get; set; } = null!;

    protected override void OnParametersSet() => Outcome = Planned.ByHand?.Checked ?? ChargeCheck.Of(Planned.Problem, Planned.Kilograms);

    /// <summary>A charge that was made by hand sits on nothing: it is as it was made.</summary>
    private string Holds(string name, params MissKind[] kinds) =>
        IsWhyShown && Planned.ByHand is null ? string.Join(" · ", BoundText.Of(Planned.Plan, Planned.Problem.Heel.Kg, name, kinds, Currency, Text)) : "";
}
