using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>One of a list: the device's own picker, which hands and screen readers know.</summary>
public sealed partial class ChoiceField
{
    private readonly string id = FieldFrame.NewId();
    private ElementReference list;

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

    /// <summary>The first field of a form that a press opened: the keyboard goes on here.</summary>
    [Parameter]
    public bool TakesFocus { get; set; }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender && TakesFocus) await list.FocusAsync();
    }

    private Task Chosen(ChangeEventArgs chosen)
    {
        Entry.Text = (string?)chosen.Value ?? "";
        return Changed.InvokeAsync();
    }
}
