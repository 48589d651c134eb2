using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Grid;

namespace MeltShop.Web.Pages.Parts;

/// <summary>The grid of burns, empty and with what is wrong in it.</summary>
public sealed partial class PartsGrid
{
    private readonly EntryForm form = new();
    private readonly EntryForm wrong = new();
    private readonly Dictionary<string, QuantityEntry> cells = [];
    private readonly GridColumn[] columns = [new("C"), new("Si"), new("Mn"), new("P"), new("Te", IsSpare: true), new("Zn", IsSpare: true)];

    public PartsGrid()
    {
        (Wrong(0, "C").Text, Wrong(0, "Si").Text, Wrong(1, "C").Text, Wrong(1, "Te").Text) = ("3.62", "<0.01", "362", "much");
    }

    private IReadOnlyList<string> Rows => [Text["Row", 1], Text["Row", 2], Text["Row", 3]];

    private IEnumerable<string> Heard => Enumerable.Range(0, Rows.Count).SelectMany(row => columns.Select(column => Cell(row, column.Symbol).Text)).Where(text => text.Length > 0);

    /// <summary>What was heard is drawn again; nothing else.</summary>
    private static void Hear()
    {
    }

    private QuantityEntry Cell(int row, string symbol) => In(form, $"{row}.{symbol}");

    private QuantityEntry Wrong(int row, string symbol) => In(wrong, $"wrong{row}.{symbol}");

    private QuantityEntry In(EntryForm into, string path) =>
        cells.TryGetValue(path, out var cell) ? cell : cells[path] = into.Quantity(path, 0, 100, allowsBelow: true);
}
