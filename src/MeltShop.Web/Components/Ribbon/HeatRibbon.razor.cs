using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Ribbon;

/// <summary>How far a heat is, as a row of steps: each with a mark beside its word, so that it reads in black and white.</summary>
public sealed partial class HeatRibbon
{
    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    [Parameter, EditorRequired]
    public IReadOnlyList<RibbonStep> Steps { get; set; } = [];

    /// <summary>The state's own name, for tests.</summary>
    [Parameter]
    public string? State { get; set; }

    private static string Mark(RibbonStep step) => step.Standing switch
    {
        RibbonStanding.Done => "✓",
        RibbonStanding.Now => "▶",
        _ => "·",
    };
}
