using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The usual cautions of a furnace with liquid metal in it, where people dip, sample and superheat. Nothing switches them off.</summary>
public sealed partial class FurnaceCautions
{
    /// <summary>The furnace's highest bath temperature, °C; null when nobody has entered one.</summary>
    [Parameter, EditorRequired]
    public double? HighestC { get; set; }
}
