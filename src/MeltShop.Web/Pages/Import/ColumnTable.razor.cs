using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Records.Laboratory;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Import;

/// <summary>What each column of the sample file holds.</summary>
public sealed partial class ColumnTable
{
    private readonly string id = FieldFrame.NewId();
    private string part = "";

    [Parameter, EditorRequired]
    public IReadOnlyList<ColumnDraft> Columns { get; set; } = [];

    private IEnumerable<Choice> Held =>
    [
        .. Enum.GetValues<ColumnRole>().Where(r => r is not (ColumnRole.Element or ColumnRole.Figure)).Select(r => new Choice(r.ToString(), Text["Role." + r])),
        .. Enum.GetValues<FigureQuantity>().Select(f => new Choice(f.ToString(), Text["Figure." + f])),
        .. Element.All.Where(e => e != Element.Fe).Select(e => new Choice(e.Symbol, Text["ElementOf", e.Symbol])),
    ];

    private void Narrow(ChangeEventArgs typed) => part = (string?)typed.Value ?? "";

    private IEnumerable<Choice> Units => Enum.GetNames<ElementUnit>().Select(name => new Choice(name, Text["Unit." + name]));
}
