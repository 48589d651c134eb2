using MeltShop.Charging.Problems;
using MeltShop.Records.Reading.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Prices of nothing or less that the plan reckons with: somebody may have forgotten one.</summary>
public sealed partial class PriceQuestions
{
    [Parameter, EditorRequired]
    public ChargeView View { get; set; } = null!;

    [Parameter, EditorRequired]
    public PlannedCharge Planned { get; set; } = null!;

    [Parameter, EditorRequired]
    public ChargeDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    [Parameter]
    public EventCallback Answered { get; set; }

    private IEnumerable<ChargeMaterial> Asked => Planned.Problem.Materials.Where(material => material.PricePerTonne <= 0 && !Draft.IsPriceRight(material.Code, material.PricePerTonne));

    private string NameOf(ChargeMaterial material) => View.Materials.FirstOrDefault(item => item.Code == material.Code)?.Name ?? material.Code;

    private long? IdOf(ChargeMaterial material) => View.Materials.FirstOrDefault(item => item.Code == material.Code)?.Id;

    private Task IsRight(ChargeMaterial material)
    {
        Draft.PriceIsRight(material.Code, material.PricePerTonne);
        return Answered.InvokeAsync();
    }
}
