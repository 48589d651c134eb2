using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>What one looks for from a few steps away: metal in the furnace, what was weighed in, the last temperature.</summary>
public sealed partial class HeatFigures
{
    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Inject]
    private ShopSite Site { get; set; } = null!;

    /// <summary>The furnace may hold the iron of another heat by now.</summary>
    private bool IsOver => Heat is { KnownAt: null, Heat.State: HeatState.Closed or HeatState.Cancelled };

    private double Weighed => Heat.Weighings.Where(weighing => !weighing.Origin.IsCorrected).Sum(weighing => weighing.Kg);

    private TemperatureView? LastTemperature =>
        Heat.Temperatures.LastOrDefault(reading => !reading.Origin.IsCorrected && reading.TreatedLadleId is null);
}
