using MeltShop.Metallurgy.Elements;
using MeltShop.Web.Components.Limits;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>What a correction promised, beside what the next sample showed.</summary>
public sealed partial class PredictedMeasured
{
    [Parameter, EditorRequired]
    public CorrectionTask Task { get; set; } = null!;

    [Parameter, EditorRequired]
    public string TestId { get; set; } = "";

    private static string Shown(PredictedValue of, double value) =>
        Element.TryParse(of.Quantity, out var element) ? PercentText.Show(element, value) : QuantityText.Show(of.Quantity, value);
}
