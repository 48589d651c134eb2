using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Where the plan sits on each limit, and what the limit costs; each can be changed for this charge.</summary>
public sealed partial class PlanLimits
{
    private string? open;

    [Parameter, EditorRequired]
    public PlannedCharge Planned { get; set; } = null!;

    [Parameter, EditorRequired]
    public GradeView Grade { get; set; } = null!;

    [Parameter, EditorRequired]
    public ChargeDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    [Parameter]
    public EventCallback Changed { get; set; }

    private void Turn(string quantity) => open = open == quantity ? null : quantity;

    private bool Clashes(string quantity) => Planned.Plan.Conflicts.Any(clash => clash.Quantity == quantity);

    private WindowView? WindowOf(string quantity) => Grade.At(WindowStage.Furnace).FirstOrDefault(window => window.Quantity == quantity);

    private string Binding(LimitRow row) => row.Outcome.Binding is BindingBound.None
        ? Text["BindsNot"]
        : $"{Text["Binds." + row.Outcome.Binding, NumberText.Show(row.Margin)]} {Price(row.Outcome.MarginalCost)}";

    private string Price(double? marginal) => marginal switch
    {
        null => Text["CostUnknown"],
        < 0 => Text["Saves", NumberText.Show(-marginal.Value, 2), Currency],
        _ => Text["Costs", NumberText.Show(marginal.Value, 2), Currency],
    };

    private string Asked(QuantityLimit limit)
    {
        var decimals = LimitRow.DecimalsOf(limit.Quantity.Name);
        return string.Join(" · ", new[]
        {
            limit.Min is { } least ? $"{Text["Least"]} {NumberText.Show(least, decimals)}" : null,
            limit.Max is { } most ? $"{Text["Most"]} {NumberText.Show(most, decimals)}" : null,
            limit.Margin > 0 ? $"{Text["Margin"]} {NumberText.Show(limit.Margin)}" : null,
        }.OfType<string>());
    }
}
