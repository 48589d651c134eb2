using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Weighing;

/// <summary>Words in which the designation of a grade is not torn apart at one of its hyphens, unless a line is too short for it.</summary>
public sealed partial class WholeWords
{
    [Parameter, EditorRequired]
    public string Text { get; set; } = "";
}
