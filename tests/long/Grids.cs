using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Grid;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using MudBlazor;

namespace MeltShop.Long;

/// <summary>240 cells: twenty burns of twelve elements.</summary>
internal static class Cells
{
    public const int Rows = 20;
    public const int Columns = 12;
    public const int All = Rows * Columns;
}

/// <summary>The house's grid.</summary>
internal sealed class HouseGrid : ComponentBase
{
    private static readonly GridColumn[] Columns = [.. "C Si Mn P S Cr Ni Mo Cu Sn Mg Ti".Split(' ').Select(symbol => new GridColumn(symbol))];
    private readonly EntryForm form = new();
    private readonly Dictionary<(int, string), QuantityEntry> cells = [];

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        builder.OpenComponent<ChemistryGrid>(0);
        builder.AddComponentParameter(1, nameof(ChemistryGrid.Label), "Burns");
        builder.AddComponentParameter(2, nameof(ChemistryGrid.Rows), (IReadOnlyList<string>)[.. Enumerable.Range(1, Cells.Rows).Select(row => $"Burn {row}")]);
        builder.AddComponentParameter(3, nameof(ChemistryGrid.Columns), (IReadOnlyList<GridColumn>)Columns);
        builder.AddComponentParameter(4, nameof(ChemistryGrid.Cell), (Func<int, string, QuantityEntry>)Cell);
        builder.AddComponentParameter(5, nameof(ChemistryGrid.Changed), EventCallback.Factory.Create(this, () => { }));
        builder.CloseComponent();
    }

    private QuantityEntry Cell(int row, string symbol) => cells.TryGetValue((row, symbol), out var cell)
        ? cell : cells[(row, symbol)] = form.Quantity($"burns[{row}].{symbol}", 0, 100, allowsBelow: true);
}

/// <summary>The same of the library's numeric fields, each bound as its documentation shows it.</summary>
internal sealed class LibraryGrid : ComponentBase
{
    private readonly double?[] values = new double?[Cells.All];

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        builder.OpenElement(0, "table");
        for (var row = 0; row < Cells.Rows; row++)
        {
            builder.OpenElement(1, "tr");
            for (var column = 0; column < Cells.Columns; column++)
            {
                var cell = (row * Cells.Columns) + column;
                builder.OpenElement(2, "td");
                builder.OpenComponent<MudNumericField<double?>>(3);
                builder.AddComponentParameter(4, nameof(MudNumericField<double?>.Value), values[cell]);
                builder.AddComponentParameter(5, nameof(MudNumericField<double?>.ValueChanged), EventCallback.Factory.Create<double?>(this, value => values[cell] = value));
                builder.AddComponentParameter(6, nameof(MudNumericField<double?>.Min), (double?)0);
                builder.AddComponentParameter(7, nameof(MudNumericField<double?>.Max), (double?)100);
                builder.CloseComponent();
                builder.CloseElement();
            }

            builder.CloseElement();
        }

        builder.CloseElement();
    }
}
