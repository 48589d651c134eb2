using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Materials of a kept plan with the price and the analysis of that day; with mass and share where they went in.</summary>
public sealed partial class KeptMaterialTable
{
    [Parameter, EditorRequired]
    public string Title { get; set; } = "";

    [Parameter, EditorRequired]
    public IReadOnlyList<(ChargeMaterial Material, PlanLine? Line)> Rows { get; set; } = [];

    /// <summary>Names of materials by code.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyDictionary<string, string> Names { get; set; } = new Dictionary<string, string>();

    /// <summary>Names of the quantities that the plan limits.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyCollection<string> Counting { get; set; } = [];

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    private bool IsIn => Rows.Any(row => row.Line is not null);
}
