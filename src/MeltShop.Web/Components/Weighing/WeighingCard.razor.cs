using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Weighing;

/// <summary>
/// What to load, in which order and how much: step, target, what is still to go and what is in, with the cautions below. Read from two
/// metres on a screen, and one sheet of paper.
/// </summary>
public sealed partial class WeighingCard
{
    /// <summary>Number of the heat.</summary>
    [Parameter, EditorRequired]
    public string Heading { get; set; } = "";

    /// <summary>Grade, mass and furnace in words.</summary>
    [Parameter, EditorRequired]
    public string What { get; set; } = "";

    /// <summary>In the order of loading.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<WeighingStep> Steps { get; set; } = [];

    /// <summary>What is dangerous about this charge; a card without it is none.</summary>
    [Parameter, EditorRequired]
    public RenderFragment Cautions { get; set; } = null!;

    /// <summary>Why nothing more of it is to be weighed; null while something may be.</summary>
    [Parameter]
    public string? Closed { get; set; }

    /// <summary>Between the head and the table: the way back, news of the rest.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    private string Left(WeighingStep step) => step.Standing switch
    {
        WeighingStanding.Done => "✓ " + Text["Done"],
        WeighingStanding.Over => "▲ " + Text["Over", MassText.Show(step.OverKg)],
        WeighingStanding.Short => "– " + Text["Short", MassText.Show(step.LeftKg)],
        _ when step.LeftKg > 0 => MassText.Number(step.LeftKg),
        _ => "–",
    };
}
