using MeltShop.Records.Heats;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Floor;

/// <summary>The steps of a heat in a row: done, now, to come.</summary>
public sealed partial class HeatRibbon
{
    [Parameter, EditorRequired]
    public HeatState State { get; set; }

    private IEnumerable<(HeatState Step, string Place)> Steps =>
        new[] { HeatState.Charging, HeatState.Bath, HeatState.Tapping }
            .Select(step => (step, step < State ? "Done" : step == State ? "Now" : "Later"));
}
