using MeltShop.Records.Heats;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>How far the heat is, as a row of steps.</summary>
public sealed partial class HeatSteps
{
    [Parameter, EditorRequired]
    public HeatState State { get; set; }

    /// <summary>A heat that was called off ends there, whatever else it would have gone through.</summary>
    private IReadOnlyList<HeatState> Steps => State is HeatState.Cancelled
        ? [HeatState.Cancelled]
        : [HeatState.Charging, HeatState.Bath, HeatState.Tapping, HeatState.Closed];
}
