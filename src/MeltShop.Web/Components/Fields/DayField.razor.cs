using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>A day by the device's own calendar; its text is <c>2026-03-31</c>, whatever the device shows.</summary>
public sealed partial class DayField
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

    private Task Chosen(ChangeEventArgs chosen)
    {
        Entry.Text = (string?)chosen.Value ?? "";
        return Changed.InvokeAsync();
    }
}
