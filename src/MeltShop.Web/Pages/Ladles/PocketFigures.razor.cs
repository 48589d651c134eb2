using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Heat;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Treatment;
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

    /// <summary>What the card's numbers come from.</summary>
    private IReadOnlyList<Formula> Formulas =>
    [
        .. Answer.Treatment is null ? [ManganeseBalance.Formula] : new[] { TreatmentBalance.Formula, MagnesiumAddition.Formula, Fade.LinearFormula },
        .. Facts.Ladle.WireMgGramsPerMetre is null ? Array.Empty<Formula>() : [CoredWire.MetresFormula],
        Inoculation.Formula, Inoculation.PickupFormula, TemperatureBudget.Formula,
    ];

    private string StopWord => Answer.Treatment is null ? "StopGrey" : Facts.IsDosedOnWeighedMass ? "StopWeighed" : "StopWords";
}
