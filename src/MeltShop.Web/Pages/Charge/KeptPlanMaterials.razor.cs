using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Operations.Charging;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Every material that a kept plan could choose from, as it was then: what is in first, by mass.</summary>
public sealed partial class KeptPlanMaterials
{
    [Parameter, EditorRequired]
    public PlanAgain Plan { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    private IEnumerable<(ChargeMaterial Material, PlanLine? Line)> Rows => Plan.Problem.Materials
        .Select(material => (material, Plan.Kept.Lines.FirstOrDefault(line => line.Code == material.Code)))
        .OrderByDescending(row => row.Item2?.Kg ?? 0).ThenBy(row => row.material.Code, StringComparer.Ordinal);
}
