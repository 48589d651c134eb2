using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.States;

public sealed partial class Notice
{
    [Parameter, EditorRequired]
    public string Heading { get; set; } = "";

    [Parameter, EditorRequired]
    public string Words { get; set; } = "";

    /// <summary>It is all that the page has to say: its heading is the page's.</summary>
    [Parameter]
    public bool IsPage { get; set; }

    [Parameter]
    public bool IsAlert { get; set; }

    [Parameter]
    public RenderFragment? ChildContent { get; set; }
}
