using MeltShop.Charging.Plans;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>All that a plan sits on beside its limits, and what that costs.</summary>
public sealed partial class PlanBounds
{
    [Parameter, EditorRequired]
    public ChargePlan Plan { get; set; } = null!;

    [Parameter, EditorRequired]
    public double HeelKg { get; set; }

    /// <summary>Names of materials by code.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyDictionary<string, string> Names { get; set; } = new Dictionary<string, string>();

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    /// <summary>Wishes steer the plan, so that what is said is not money alone.</summary>
    [Parameter]
    public bool IsSteered { get; set; }

    private IReadOnlyList<(BoundOutcome Bound, string Name)> Rows => [.. Plan.Bounds.Select(bound => (bound, NameOf(bound)))];

    private string NameOf(BoundOutcome bound) => bound.Kind switch
    {
        MissKind.GroupKg or MissKind.GroupPercent => KindText.Of(bound.Name, Text, YardText),
        MissKind.Volume => Text["Room." + bound.Name],
        MissKind.LiquidKg => Text["Liquid"],
        MissKind.WeighedKg => Text["Weighed"],
        _ => Names.GetValueOrDefault(bound.Name, bound.Name),
    };
}
