using MeltShop.Metallurgy;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Plain inputs in one component: a field component a cell costs a hundred times as much to draw. What is wrong is said below, with burn and element.</summary>
public sealed partial class SampleGrid
{
    [Parameter, EditorRequired]
    public SampleDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public EntryForm Form { get; set; } = null!;

    private IEnumerable<(string Words, Finding Finding)> Wrong =>
        Enumerable.Range(0, Draft.Burns).SelectMany(Of).Where(told => told.Found is not null).Select(told => (told.Words, told.Found!));

    private IEnumerable<(string Words, Finding? Found)> Of(int burn) =>
    [
        .. Draft.Elements.Select(element => (Text["CellOf", burn + 1, element.Symbol].Value, Draft.Cell(burn, element).Finding)),
        (Text["BurnOf", burn + 1].Value, Form.At($"burns[{burn}]")),
    ];

    private static void Type(QuantityEntry cell, ChangeEventArgs typed) => cell.Text = (string?)typed.Value ?? "";
}
