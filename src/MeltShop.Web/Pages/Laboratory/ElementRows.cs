using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>A row an element with two figures beside it, as they are typed.</summary>
public sealed class ElementRows(EntryForm form, string prefix, double mostSecond, bool firstIsNeeded)
{
    private readonly List<ElementRow> rows = [];

    public IReadOnlyList<ElementRow> Rows => rows;

    public void Add(string? symbol = null, double? first = null, double? second = null)
    {
        var path = symbol is null ? form.NameRow($"{prefix}.row") : $"{prefix}.{symbol}";
        rows.Add(new(
            path,
            form.Words($"{path}.element", isRequired: true, Judge).Showing(symbol),
            form.Quantity($"{path}.first", 0, 100, isRequired: firstIsNeeded).Showing(first),
            form.Quantity($"{path}.second", 0, mostSecond).Showing(second)));
    }

    public void Remove(ElementRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        rows.Remove(row);
        foreach (var field in new FieldEntry[] { row.Symbol, row.First, row.Second }) form.Remove(field);
    }

    public void Clear()
    {
        foreach (var row in rows.ToList()) Remove(row);
    }

    public IEnumerable<Finding> Twice() => rows.Where((row, place) => rows.Take(place).Any(other => other.Symbol.Value == row.Symbol.Value))
        .Select(row => new Finding(row.Symbol.Path, "element.twice", row.Symbol.Value!));

    private static string? Judge(string symbol) => !Element.TryParse(symbol, out var element) || element == Element.Fe ? "element.unknown" : null;
}

/// <param name="Name">In its form.</param>
public sealed record ElementRow(string Name, TextEntry Symbol, QuantityEntry First, QuantityEntry Second);
