using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Names the furnace's highest temperature beside a reading that comes near it or goes over it.</summary>
public sealed partial class SuperheatTag
{
    /// <summary>Bath, °C.</summary>
    [Parameter, EditorRequired]
    public double TemperatureC { get; set; }

    /// <summary>The furnace's highest bath temperature, °C; null when nobody has entered one.</summary>
    [Parameter, EditorRequired]
    public double? HighestC { get; set; }

    private Superheat Superheat => SuperheatLimit.Of(TemperatureC, HighestC);

    private string Limit => HighestC is { } highest ? TemperatureText.Show(highest) : "";
}
