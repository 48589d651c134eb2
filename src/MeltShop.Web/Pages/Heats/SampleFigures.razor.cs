using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>What a cup or a wedge said, and what follows from it.</summary>
public sealed partial class SampleFigures
{
    [Parameter, EditorRequired]
    public SampleView Sample { get; set; } = null!;

    private double? Recalescence => Sample.Figure(FigureQuantity.EutecticHighC) - Sample.Figure(FigureQuantity.EutecticLowC);

    private double? Line => Sample.Figure(FigureQuantity.LiquidusC) is { } liquidus ? LiquidusCalibration.Printed.CarbonEquivalentPercent(liquidus) : null;

    /// <summary>Above the eutectic the first arrest is not austenite's.</summary>
    private bool IsBeyond => Line > Liquidus.MaximumCarbonEquivalent;

    private IReadOnlyList<Formula> Formulas => CarbonEquivalent is null ? [] : [Liquidus.TemperatureFormula];

    private double? CarbonEquivalent => IsBeyond ? null : Line;

    /// <summary>Letter by letter as it was read, where that is in the shop's unit.</summary>
    private static string Shown(FigureView figure) => figure switch
    {
        { Quantity: FigureQuantity.ChillMm } => UnitText.Of(figure.InstrumentText, "mm"),
        { InstrumentText: [.., >= '0' and <= '9'] text } when ShopUnits.Current.Temperature.IsRecorded => UnitText.Of(text, ShopUnits.Current.Temperature.Sign),
        _ => TemperatureText.Show(figure.Value),
    };
}
