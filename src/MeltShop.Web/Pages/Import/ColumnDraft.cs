using System.Globalization;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Records.Laboratory;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Import;

/// <summary>A column of the sample file, and what somebody says that it holds.</summary>
public sealed class ColumnDraft
{
    public ColumnDraft(EntryForm form, int place, string heading, IReadOnlyList<string> examples, IReadOnlyDictionary<string, ColumnDraft> said)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(said);
        (Place, Heading, Examples) = (place, heading, examples);
        Holds = form.Choice(string.Create(CultureInfo.InvariantCulture, $"columns[{place}]"));
        Unit = form.Choice(string.Create(CultureInfo.InvariantCulture, $"columns[{place}].unit"));
        if (heading.Length > 0 && said.TryGetValue(heading, out var before))
        {
            Holds.Showing(before.Holds.Value);
            Unit.Showing(before.Unit.Value);
            return;
        }

        // A heading that is an element's symbol means it; everything else is for the person to say.
        var symbol = heading.Split(' ', '%', '[', '(')[0];
        if (Element.TryParse(symbol, out var element) && element != Element.Fe) Holds.Showing(symbol);
        Unit.Showing((heading.Contains("ppm", StringComparison.OrdinalIgnoreCase) ? ElementUnit.PartsPerMillion : ElementUnit.Percent).ToString());
    }

    /// <summary>A column as a map has it, before any file is pointed at.</summary>
    internal ColumnDraft(EntryForm form, MappedColumn column)
        : this(form, column.Place, column.Heading, [], new Dictionary<string, ColumnDraft>())
    {
        Holds.Showing(column.Role switch { ColumnRole.Element => column.Element, ColumnRole.Figure => column.Figure.ToString(), var role => role.ToString() });
        Unit.Showing(column.Unit.ToString());
    }

    public int Place { get; }

    public string Heading { get; }

    /// <summary>The first cells under it.</summary>
    public IReadOnlyList<string> Examples { get; }

    /// <summary>A role, the symbol of an element, or a figure; empty: it is passed over.</summary>
    public TextEntry Holds { get; }

    public TextEntry Unit { get; }

    public bool IsElement => Holds.Value is { } held && Element.TryParse(held, out _);

    /// <summary>Null where it is passed over.</summary>
    public MappedColumn? Column => Holds.Value is not { } held ? null
        : IsElement ? new(Place, Heading, ColumnRole.Element, held, Enum.Parse<ElementUnit>(Unit.Value!))
        : Enum.TryParse<FigureQuantity>(held, out var figure) ? new(Place, Heading, ColumnRole.Figure, Figure: figure)
        : new(Place, Heading, Enum.Parse<ColumnRole>(held));

    /// <summary>The form forgets it: the file is read anew.</summary>
    public void Leave(EntryForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        form.Remove(Holds);
        form.Remove(Unit);
    }
}
