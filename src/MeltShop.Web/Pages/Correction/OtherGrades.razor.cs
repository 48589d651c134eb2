using MeltShop.Operations.Correcting;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Correction;

/// <summary>Which other grades this bath meets, or meets after a correction of its own.</summary>
public sealed partial class OtherGrades
{
    /// <summary>Null until somebody looked.</summary>
    [Parameter, EditorRequired]
    public GradesInReach? Found { get; set; }

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    [Parameter]
    public bool IsWorking { get; set; }

    [Parameter, EditorRequired]
    public DateOnly Today { get; set; }

    [Parameter, EditorRequired]
    public EventCallback Look { get; set; }

    private OtherGrade? FirstLarger => Found?.Found.FirstOrDefault(other => other.IsSmaller == false);

    private OtherGrade? FirstUnknown => Found?.Found.FirstOrDefault(other => other.IsSmaller is null);

    private string Words(OtherGrade other) => other.Kg == 0
        ? Text["MeetsAlready"]
        : Text["MeetsAfter", MassText.Show(other.Kg), NumberText.Show(other.Cost, 2), Currency, other.Minutes is { } minutes ? Text["WayMinutes", NumberText.Show(minutes, 1)] : Text["WayMinutesUnknown"]];

    private string More(OtherGrade other) => other.Orders.Count > 1 ? Text["MoreOrders", other.Orders.Count - 1, MassText.Show(other.Orders.Sum(order => order.LeftKg))] : "";
}
