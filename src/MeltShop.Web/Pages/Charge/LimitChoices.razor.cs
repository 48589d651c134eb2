using MeltShop.Operations.Charging;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Another least or most for this charge only.</summary>
public sealed partial class LimitChoices
{
    [Parameter, EditorRequired]
    public string Quantity { get; set; } = "";

    [Parameter, EditorRequired]
    public TargetRow? Row { get; set; }

    [Parameter, EditorRequired]
    public LimitDraft Draft { get; set; } = null!;

    [Parameter]
    public EventCallback Changed { get; set; }

    private string Standing(double? bound) => bound is { } number
        ? Text[Row?.IsPoured == true ? "PouredSays" : "GradeSays", Percent(Math.Round(number, LimitRow.DecimalsOf(Quantity) + 1))] : Text["GradeOpen"];

    private static string Percent(double number) => NumberText.Show(number) + " %";

    private Task Clear()
    {
        Draft.Clear();
        return Changed.InvokeAsync();
    }
}
