using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Operations.Charging;
using MeltShop.Records.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What a kept plan put in, by mass, and apart what else it could choose from, all as it was then.</summary>
public sealed partial class KeptPlanMaterials
{
    [Parameter, EditorRequired]
    public PlanAgain Plan { get; set; } = null!;

    /// <summary>Names of materials by code.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyDictionary<string, string> Names { get; set; } = new Dictionary<string, string>();

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    private string[] Counting => [.. Plan.Problem.Limits.Select(limit => limit.Quantity.Name)];

    private IReadOnlyList<(ChargeMaterial Material, PlanLine? Line)> In => [.. All.Where(row => row.Line is not null).OrderByDescending(row => row.Line!.Kg)];

    private IReadOnlyList<(ChargeMaterial Material, PlanLine? Line)> Others =>
        [.. All.Where(row => row.Line is null).OrderBy(row => Names.GetValueOrDefault(row.Material.Code, row.Material.Code), NaturalOrder.Names)];

    private IEnumerable<(ChargeMaterial Material, PlanLine? Line)> All => Plan.Problem.Materials
        .Select(material => (material, Plan.Kept.Lines.FirstOrDefault(line => line.Code == material.Code)));
}
