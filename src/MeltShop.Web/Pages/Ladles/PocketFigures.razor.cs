using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Sites;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What goes in and when to stop, to be read from a step away.</summary>
public sealed partial class PocketFigures
{
    [Parameter, EditorRequired]
    public PocketAnswer Answer { get; set; } = null!;

    [Parameter, EditorRequired]
    public Ladle Ladle { get; set; } = null!;

    /// <summary>The printed general formula for the same case; null where its sulphur term does not fit. Its (T/1450)² belongs to a recovery known at 1450 °C.</summary>
    private double? Printed => Answer.Problem is { } problem && problem.BaseAnalysis.OrZero(Element.S) >= problem.Recipe.SulphurLeftPercent
        ? MagnesiumAddition.AlloyKg(
            problem.IronKg, problem.TargetMgPercent, problem.BaseAnalysis.OrZero(Element.S), problem.Recipe.SulphurLeftPercent, problem.AtMinutes,
            problem.Recipe.Alloy.Analysis.OrZero(Element.Mg), problem.Recipe.MgRecoveryPercent,
            problem.Recipe.RecoveryTemperatureC is { } known ? 1450 * problem.TemperatureC / known : 1450)
        : null;
}
