using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Another least or most for this charge only.</summary>
public sealed partial class LimitChoices
{
    [Parameter, EditorRequired]
    public string Quantity { get; set; } = "";

    [Parameter, EditorRequired]
    public WindowView? Window { get; set; }

    [Parameter, EditorRequired]
    public LimitDraft Draft { get; set; } = null!;

    [Parameter]
    public EventCallback Changed { get; set; }

    private string Standing(double? bound) => bound is { } number ? Text["GradeSays", NumberText.Show(number)] : Text["GradeOpen"];

    private Task Clear()
    {
        Draft.Clear();
        return Changed.InvokeAsync();
    }
}
