using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Grades;

/// <summary>How iron of the grade is treated and inoculated unless a ladle says otherwise.</summary>
public sealed partial class RecipeCard
{
    [Parameter, EditorRequired]
    public RecipeView Recipe { get; set; } = null!;

    private string Shown(double? value, string unit) => value is { } number ? $"{NumberText.Show(number)} {unit}" : Text["NotGiven"];
}
