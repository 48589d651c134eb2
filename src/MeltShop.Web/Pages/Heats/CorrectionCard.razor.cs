using MeltShop.Metallurgy.Elements;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The last accepted correction as the melter's task: weighed in line by line, then its prediction beside the next sample.</summary>
public sealed partial class CorrectionCard
{
    private WeighingEntry entry = new();
    private string? opened;

    [Parameter, EditorRequired]
    public HeatScreen Screen { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    [Inject]
    private ShopSite Site { get; set; } = null!;

    private CorrectionTask? Latest { get; set; }

    protected override void OnParametersSet() =>
        Latest = Screen.Heat.Corrections.LastOrDefault(c => !c.Origin.IsCorrected) is { } last ? CorrectionTask.Of(last, Screen.Heat, Screen.Yard) : null;

    private static string Shown(PredictedValue of, double value) =>
        Element.TryParse(of.Quantity, out var element) ? PercentText.Show(element, value) : QuantityText.Show(of.Quantity, value);

    private void Open(WeighingRow line)
    {
        (opened, entry) = (line.Code, new());
        entry.Belongs("heatId", Screen.Heat.Heat.Id);
        entry.Belongs("intoBath", 1);
        entry.Only(line.MaterialId!.Value);
    }

    private void Leave() => opened = null;
}
