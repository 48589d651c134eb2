using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Import;

/// <summary>What each column of the sample file holds.</summary>
public sealed partial class ColumnTable
{
    [Parameter, EditorRequired]
    public IReadOnlyList<ColumnDraft> Columns { get; set; } = [];

    private IEnumerable<Choice> Held =>
    [
        .. Enum.GetValues<ColumnRole>().Where(r => r != ColumnRole.Element).Select(r => new Choice(r.ToString(), Text["Role." + r])),
        .. Element.All.Where(e => e != Element.Fe).Select(e => new Choice(e.Symbol, Text["ElementOf", e.Symbol])),
    ];

    private IEnumerable<Choice> Units => Enum.GetNames<ElementUnit>().Select(name => new Choice(name, Text["Unit." + name]));
}
