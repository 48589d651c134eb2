using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>One of a list: the device's own picker, which hands and screen readers know.</summary>
public sealed partial class ChoiceField
{
    private readonly string id = FieldFrame.NewId();

    [Parameter, EditorRequired]
    public TextEntry Entry { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    [Parameter, EditorRequired]
    public IEnumerable<Choice> Choices { get; set; } = [];

    /// <summary>What the empty choice says, where an empty one is an answer: <c>all kinds</c>.</summary>
    [Parameter]
    public string? Empty { get; set; }

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
