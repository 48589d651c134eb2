using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Entries;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Temperatures of the ladle: each moves the clock of the least pouring temperature.</summary>
public sealed partial class LadleTemperatureCard
{
    private TemperatureEntry entry = new();
    private long? ladle;

    [Parameter, EditorRequired]
    public LadleView View { get; set; } = null!;

    /// <summary>Not once the castings are released.</summary>
    private bool IsOffered => View.Treated!.State != TreatedLadleState.Released;

    protected override void OnParametersSet()
    {
        if (ladle == View.Treated!.Id) return;
        (entry, ladle) = (new(), View.Treated.Id);
        entry.Belongs("heatId", View.Treated.HeatId);
        entry.Belongs("treatedLadleId", View.Treated.Id);
    }

    private void Saved()
    {
        entry.Degrees.Showing(null);
        entry.Minutes.Showing(null);
    }
}
