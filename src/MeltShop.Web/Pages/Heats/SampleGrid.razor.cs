using MeltShop.Metallurgy.Elements;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Grid;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The burns of a coin in the grid of every sample: what the grade limits in sight, every other element one key away.</summary>
public sealed partial class SampleGrid
{
    [Parameter, EditorRequired]
    public SampleDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public EntryForm Form { get; set; } = null!;

    /// <summary>One row for the mean that the instrument sent.</summary>
    [Parameter]
    public bool IsMeanOnly { get; set; }

    /// <summary>A press opened the form for this.</summary>
    [Parameter]
    public bool TakesFocus { get; set; }

    /// <summary>After a cell was typed and left: whether it clashes with what somebody else typed is for the form to say.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    private IReadOnlyList<string> Rows => IsMeanOnly ? [Text["Mean"].Value] : [.. Enumerable.Range(1, Draft.Burns).Select(burn => Text["BurnOf", burn].Value)];

    private IReadOnlyList<GridColumn> Columns =>
        [.. Draft.Usual.Select(element => new GridColumn(element.Symbol)), .. Draft.Elements.Except(Draft.Usual).Select(element => new GridColumn(element.Symbol, IsSpare: true))];
}
