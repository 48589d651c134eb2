using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>
/// One of a list: the device's own picker, which hands and screen readers know. A list that is too long to look through can be narrowed by a
/// part of its words; nothing of it is left out unsaid.
/// </summary>
public sealed partial class ChoiceField
{
    /// <summary>A picker with more lines is searched rather than looked through.</summary>
    private const int Long = 60;

    private readonly string id = FieldFrame.NewId();
    private IReadOnlyList<Choice> all = [];
    private string[] words = [];

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

    /// <summary>What one field for many lists of the same choices looks for; null where a long list has a field of its own.</summary>
    [Parameter]
    public string? NarrowedBy { get; set; }

    private bool IsLong => all.Count > Long;

    private bool HasOwnNarrowing => IsLong && NarrowedBy is null;

    /// <summary>What was chosen stays in the list, whatever is looked for.</summary>
    private IReadOnlyList<Choice> Shown => !IsLong ? all : [.. all.Where(choice => choice.Value == Entry.Text || Fits(choice))];

    protected override void OnParametersSet()
    {
        all = [.. Choices.DistinctBy(choice => choice.Value)];
        if (NarrowedBy is { } part) Narrow(part);
    }

    private bool Fits(Choice choice) => words.All(word => choice.Words.Contains(word, StringComparison.CurrentCultureIgnoreCase));

    private void Narrow(ChangeEventArgs typed) => Narrow((string?)typed.Value ?? "");

    private void Narrow(string part) => words = part.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private Task Choose(string? chosen)
    {
        Entry.Text = chosen ?? "";
        return Changed.InvokeAsync();
    }
}
