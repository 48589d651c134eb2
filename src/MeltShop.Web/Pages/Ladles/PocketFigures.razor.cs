using MeltShop.Operations.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What goes in and when to stop, to be read from a step away.</summary>
public sealed partial class PocketFigures
{
    [Parameter, EditorRequired]
    public PocketAnswer Answer { get; set; } = null!;

    [Parameter, EditorRequired]
    public PocketFacts Facts { get; set; } = null!;

    private string AlloyWord => Facts switch
    {
        { IsDosedOnWeighedMass: true } => "AlloyOnWeighed",
        { Ladle.Process: LadleProcess.InMould } => "AlloyInMoulds",
        { Ladle.Process: LadleProcess.FlowThrough } => "AlloyInChamber",
        _ => "CardAlloy",
    };

    private string StopWord => Answer.Treatment is null ? "StopGrey" : Facts.IsDosedOnWeighedMass ? "StopWeighed" : "StopWords";
}
