using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Entries;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Temperatures of the bath; those of a ladle stand with the ladle.</summary>
public sealed partial class TemperatureCard
{
    private readonly TemperatureEntry entry = new();

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    private IReadOnlyList<TemperatureView> Readings =>
        [.. Heat.Temperatures.Where(reading => reading.TreatedLadleId is null && !reading.Origin.IsCorrected).Reverse()];

    protected override void OnParametersSet() => entry.Belongs("heatId", Heat.Heat.Id);

    private void Saved()
    {
        entry.Degrees.Showing(null);
        entry.Minutes.Showing(null);
    }
}
