using MeltShop.Records.Heats;
using MeltShop.Web.Components.Ribbon;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The states of a heat as steps of its ribbon.</summary>
public sealed partial class HeatSteps
{
    [Parameter, EditorRequired]
    public HeatState State { get; set; }

    /// <summary>A heat that was called off ends there, whatever else it would have gone through.</summary>
    private IReadOnlyList<HeatState> Steps => State is HeatState.Cancelled
        ? [HeatState.Cancelled]
        : [HeatState.Charging, HeatState.Bath, HeatState.Tapping, HeatState.Closed];

    private IReadOnlyList<RibbonStep> Ribbon => [.. Steps.Select(step => new RibbonStep(Text["State." + step].Value, Standing(step)))];

    private RibbonStanding Standing(HeatState step) => step == State ? RibbonStanding.Now : step < State ? RibbonStanding.Done : RibbonStanding.Later;
}
