using MeltShop.Charging.Plans;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Yard;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>A charge as a person makes it, material by material, beside the cheapest one.</summary>
public sealed partial class HandMasses
{
    [Parameter, EditorRequired]
    public ChargeView View { get; set; } = null!;

    [Parameter, EditorRequired]
    public PlannedCharge Planned { get; set; } = null!;

    [Parameter, EditorRequired]
    public ChargeDraft Draft { get; set; } = null!;

    [Parameter]
    public EventCallback Changed { get; set; }

    private HashSet<string> begun = [];
    private bool isAllShown;

    /// <summary>What was in it when it was begun comes first; the order stays while one types.</summary>
    private IReadOnlyList<MaterialView> Materials { get; set; } = [];

    private HandDraft Made { get; set; } = null!;

    protected override void OnParametersSet()
    {
        if (Draft.ByHand is not { } made || made == Made) return;
        Made = made;
        begun = [.. made.Choice().Select(mass => mass.Code)];
        Materials = [.. View.Materials.OrderBy(item => begun.Contains(item.Code) ? 0 : 1).ThenBy(item => item.Code, NaturalOrder.Names)];
    }

    /// <summary>What is in it, and all else at a press.</summary>
    private IReadOnlyList<MaterialView> Shown =>
        isAllShown ? Materials : [.. Materials.Where(item => begun.Contains(item.Code) || Planned.Plan.Lines.Any(line => line.Code == item.Code))];

    private void ShowAll() => isAllShown = true;

    private static string Kg(ChargePlan plan, string code) => plan.Lines.FirstOrDefault(line => line.Code == code) is { } line ? MassText.Show(line.Kg) : "–";

    private string? Share(string code) => Planned.ByHand?.Checked.Lines.FirstOrDefault(line => line.Code == code) is { } line ? ShareText.Show(line.Percent) : null;

    private Task Back()
    {
        Draft.Unmake();
        return Changed.InvokeAsync();
    }
}
