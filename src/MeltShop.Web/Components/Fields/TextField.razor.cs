using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>A line of words.</summary>
public sealed partial class TextField
{
    private readonly string id = FieldFrame.NewId();

    [Parameter, EditorRequired]
    public TextEntry Entry { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    [Parameter]
    public string? Help { get; set; }

    /// <summary>What is said most of the time: one press instead of a keyboard, for hands in gloves.</summary>
    [Parameter]
    public IReadOnlyList<string> Usual { get; set; } = [];

    /// <summary>What belongs to the field and stands under it.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }

    /// <summary>The first field of a form that a press opened: the keyboard goes on here.</summary>
    [Parameter]
    public bool TakesFocus { get; set; }

    private Task Say(string? words)
    {
        Entry.Text = words ?? "";
        return Changed.InvokeAsync();
    }
}
