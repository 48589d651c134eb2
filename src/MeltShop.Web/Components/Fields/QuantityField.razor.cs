using MeltShop.Metallurgy.Formulas;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>
/// A quantity with its unit. A plain text input: the number types of browsers step by accident and have keypads without a
/// decimal sign. The text stays as typed; what was read is echoed with its unit.
/// </summary>
public sealed partial class QuantityField
{
    private readonly string id = FieldFrame.NewId();
    private ElementReference input;

    [Parameter, EditorRequired]
    public QuantityEntry Entry { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    /// <summary>Its unit; left out where it is the shop's.</summary>
    [Parameter]
    public string? Unit { get; set; }

    /// <summary>A few words of help; the range is said anyway.</summary>
    [Parameter]
    public string? Help { get; set; }

    /// <summary>What an empty field counts as, in words of its own; without them it says that it may stay empty.</summary>
    [Parameter]
    public string? Empty { get; set; }

    /// <summary>The formula that the number goes into or comes from, offered with its source.</summary>
    [Parameter]
    public Formula? Formula { get; set; }

    [Parameter]
    public bool IsReadOnly { get; set; }

    /// <summary>What stands around it says already that it may stay empty.</summary>
    [Parameter]
    public bool IsQuiet { get; set; }

    /// <summary>After a text was typed and left.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    /// <summary>The first field of a form that a press opened: the keyboard goes on here.</summary>
    [Parameter]
    public bool TakesFocus { get; set; }

    private string Shown => Unit ?? Entry.Unit.Sign;

    protected override void OnParametersSet() => Entry.Form.Draw();

    private string Note => Entry is { Value: not null, Reading.Value: { } value }
        ? Text[Entry.Reading.IsBelow ? "ReadBelow" : "Read", UnitText.Of(NumberText.Show(value), Shown)]
        : string.Join(" · ", new[] { Range, Entry.IsRequired || IsQuiet ? null : Empty ?? Text["Optional"].Value, Help }.OfType<string>());

    /// <summary>An end that no foundry reaches is refused when it is passed, and not worth reading before.</summary>
    private const double WorthSaying = 100_000;

    private string? Range => new NumberRange(Said(Entry.Range.Least), Said(Entry.Range.Most)) switch
    {
        { Least: { } least, Most: { } most } => Text["RangeBoth", NumberText.Show(least), NumberText.Show(most)].Value,
        { Least: { } least } => Text["RangeLeast", NumberText.Show(least)].Value,
        { Most: { } most } => Text["RangeMost", NumberText.Show(most)].Value,
        _ => null,
    };

    private static double? Said(double? end) => Math.Abs(end ?? 0) < WorthSaying ? end : null;

    private Task Type(string? typed)
    {
        Entry.Text = typed ?? "";
        return Changed.InvokeAsync();
    }

    /// <summary>The choices go with the choice; the keyboard goes on in the field and not at the top of the page.</summary>
    private async Task Take(double reading)
    {
        Entry.Text = NumberText.Unmistakable(reading);
        await input.FocusAsync();
        await Changed.InvokeAsync();
    }
}
