using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>A form of a ladle that is empty by the scales: folded away, one press from whoever forgot something.</summary>
public sealed partial class LateEntry
{
    [Parameter, EditorRequired]
    public bool IsFolded { get; set; }

    /// <summary>What somebody says by opening it.</summary>
    [Parameter, EditorRequired]
    public string Words { get; set; } = "";

    [Parameter, EditorRequired]
    public RenderFragment? ChildContent { get; set; }
}
