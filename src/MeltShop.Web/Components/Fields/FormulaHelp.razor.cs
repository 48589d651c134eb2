using MeltShop.Metallurgy.Formulas;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>
/// Formulas as they stand in their records: what they say, where they hold, where they come from. Opened by whoever wants to know. A record is
/// printed in the language of docs/METALLURGY.md, so that the page and the docs cannot differ.
/// </summary>
public sealed partial class FormulaHelp
{
    /// <summary>Where there is none, nothing is offered.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<Formula> Formulas { get; set; } = [];

    /// <summary>What it belongs to, for those who hear one question mark after another.</summary>
    [Parameter]
    public string? Of { get; set; }
}
