using MeltShop.Metallurgy.Formulas;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>A formula as it stands in its record: what it says, where it holds, where it comes from. Opened by whoever wants to know.</summary>
public sealed partial class FormulaHelp
{
    [Parameter, EditorRequired]
    public Formula Formula { get; set; } = null!;

    /// <summary>What it belongs to, for those who hear one question mark after another.</summary>
    [Parameter]
    public string? Of { get; set; }
}
