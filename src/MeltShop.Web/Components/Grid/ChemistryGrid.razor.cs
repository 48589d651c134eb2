using MeltShop.Metallurgy;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Grid;

/// <summary>
/// A row a burn, an element a column: plain inputs in one component, for a field component a cell costs a hundred times as much to
/// draw. grid.js moves from cell to cell; the server hears of a cell when it is left, and of no key. What is wrong is said below, with
/// row and element.
/// </summary>
public sealed partial class ChemistryGrid
{
    private readonly string id = FieldFrame.NewId();

    /// <summary>What the grid is called.</summary>
    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    /// <summary>The words of each row.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<string> Rows { get; set; } = [];

    [Parameter, EditorRequired]
    public IReadOnlyList<GridColumn> Columns { get; set; } = [];

    /// <summary>The entry of a row, from 0, and a symbol.</summary>
    [Parameter, EditorRequired]
    public Func<int, string, QuantityEntry> Cell { get; set; } = null!;

    /// <summary>What is wrong with a row as a whole.</summary>
    [Parameter]
    public Func<int, Finding?> RowFinding { get; set; } = _ => null;

    /// <summary>After a cell was typed and left.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    /// <summary>A press opened the form for this: the keyboard goes on in the first cell.</summary>
    [Parameter]
    public bool TakesFocus { get; set; }

    private int Spares => Columns.Count(column => column.IsSpare);

    private IEnumerable<(string Words, Finding Finding)> Wrong =>
        Enumerable.Range(0, Rows.Count).SelectMany(Of).Where(told => told.Found is not null).Select(told => (told.Words, told.Found!));

    private IEnumerable<(string Words, Finding? Found)> Of(int row) =>
    [
        .. Columns.Select(column => (Text["Cell", Rows[row], column.Symbol].Value, Cell(row, column.Symbol).Finding)),
        (Rows[row], RowFinding(row)),
    ];

    /// <summary>The grid is one stop of the Tab key; where that is, the script moves.</summary>
    private bool IsFirst(int row, GridColumn column) => row == 0 && column == Columns[0];

    /// <summary>A spare column that holds something stays in sight.</summary>
    private string? Spare(GridColumn column) =>
        column.IsSpare && Enumerable.Range(0, Rows.Count).All(row => Cell(row, column.Symbol).Text.Length == 0) ? "spare" : null;

    private Task Type(QuantityEntry cell, string? typed)
    {
        cell.Text = typed ?? "";
        return Changed.InvokeAsync();
    }
}
