using MeltShop.Charging.Plans;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>No charge was found, and nobody has shown that there is none: why, and the cheapest as if pieces could be cut, for a person to make whole.</summary>
public sealed partial class PlanNotFound
{
    [Parameter, EditorRequired]
    public ChargePlan Plan { get; set; } = null!;

    /// <summary>Names of materials by code.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyDictionary<string, string> Names { get; set; } = new Dictionary<string, string>();

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";
}
