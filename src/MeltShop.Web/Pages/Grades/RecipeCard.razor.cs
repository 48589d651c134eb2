using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Grades;

/// <summary>How iron of the grade is treated and inoculated unless a ladle says otherwise.</summary>
public sealed partial class RecipeCard
{
    private bool isOpen;

    [Parameter, EditorRequired]
    public GradeView Grade { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    /// <summary>The grade is another now: the page has to read again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    private string Shown(double? value, string unit) => value is { } number ? $"{NumberText.Show(number)} {unit}" : Text["NotGiven"];

    private void Close() => isOpen = false;
}
