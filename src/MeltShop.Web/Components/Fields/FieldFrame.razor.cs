using MeltShop.Metallurgy;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>Label above, field, and one line below: the error where there is one, otherwise the help.</summary>
public sealed partial class FieldFrame
{
    [Parameter, EditorRequired]
    public string Id { get; set; } = "";

    [Parameter, EditorRequired]
    public string Path { get; set; } = "";

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    [Parameter]
    public string? Note { get; set; }

    [Parameter]
    public Finding? Finding { get; set; }

    [Parameter, EditorRequired]
    public RenderFragment? ChildContent { get; set; }

    /// <summary>An id of its own for a field, so that its label and its note find it.</summary>
    internal static string NewId() => "f" + Guid.NewGuid().ToString("N")[..8];
}
