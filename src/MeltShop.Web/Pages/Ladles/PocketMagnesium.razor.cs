using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Sites;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What the iron will be: residual magnesium as line and band with its sources, or the manganese balance of grey iron.</summary>
public sealed partial class PocketMagnesium
{
    [Parameter, EditorRequired]
    public PocketAnswer Answer { get; set; } = null!;

    [Parameter, EditorRequired]
    public PocketFacts Facts { get; set; } = null!;

    private string Sources => string.Join("; ", new[] { LadleFigureKind.MgRecovery, LadleFigureKind.MgFade }
        .Select(kind => Facts.Figures.GetValueOrDefault(kind) is { } figure ? $"{Text["Standing." + figure.Standing].Value}: {figure.Source}" : null).OfType<string>()
        .DefaultIfEmpty(Facts.Ladle.FiguresSource).Distinct());

    private double? Wire => Facts.Ladle.WireMgGramsPerMetre is { } grams && Answer.Treatment is { } treatment ? CoredWire.MetresOf(treatment.AlloyKg, grams) : null;

    private double? Balance => Facts.Bath.Has(Element.Mn) && Facts.Bath.Has(Element.S) ? ManganeseBalance.Quantity.Value(Facts.Bath) : null;

    /// <summary>The printed general formula for the same case; null where its sulphur term does not fit, or its cover. Its (T/1450)² belongs to a recovery known at 1450 °C.</summary>
    private double? Printed => Answer.Problem is { Cover: null } problem && problem.BaseAnalysis.OrZero(Element.S) >= problem.Recipe.SulphurLeftPercent
        ? MagnesiumAddition.AlloyKg(
            problem.IronKg, problem.TargetMgPercent, problem.BaseAnalysis.OrZero(Element.S), problem.Recipe.SulphurLeftPercent, problem.AtMinutes,
            problem.Recipe.Alloy.Analysis.OrZero(Element.Mg), problem.Recipe.MgRecoveryPercent,
            problem.Recipe.RecoveryTemperatureC is { } known ? 1450 * problem.TemperatureC / known : 1450)
        : null;
}
