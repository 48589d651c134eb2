using MeltShop.Operations.Charging;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
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

    /// <summary>Without a plan there is no target to say anything of: it is not read as a grade that sets no limit.</summary>
    [Parameter]
    public bool IsAlone { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }

    private string Standing(bool isLeast) => IsAlone ? "" : Bound(isLeast) is { } number
        ? Text[Row switch { { IsCountedPoured: true } => "PouredSays", { IsPoured: true } => "TurnedBack", _ => "GradeSays" }, UnitText.Of(NumberText.Show(Math.Round(QuantityText.Shown(Quantity, number), QuantityText.Decimals(Quantity) + 1)), QuantityText.Unit(Quantity))] : Text["GradeOpen"];

    /// <summary>What the target says; of a curved quantity the grade's own, since its rows hold the margin.</summary>
    private double? Bound(bool isLeast) => Row is { IsAdded: true } ? null : Row is { IsCurved: true, Window: { } window } ? (isLeast ? window.Least : window.Most) : (isLeast ? Row?.Bounds.Least : Row?.Bounds.Most);

    private Task Clear()
    {
        Draft.Clear();
        return Changed.InvokeAsync();
    }
}
