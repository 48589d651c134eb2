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

    [Parameter]
    public EventCallback Changed { get; set; }

    private Task Typed(ChangeEventArgs typed)
    {
        Entry.Text = (string?)typed.Value ?? "";
        return Changed.InvokeAsync();
    }
}
