using MeltShop.Web.Api.Reading;

namespace MeltShop.Web.Api.Weighings;

/// <summary>What a scale under a ladle sends once it was tapped.</summary>
/// <param name="Id">The sender's own name of this tap; sent again, it is answered again and recorded once.</param>
/// <param name="Heat">The heat's number.</param>
/// <param name="Ladle">The ladle's code.</param>
/// <param name="By">Sign-in name of the person who taps.</param>
/// <param name="TemperatureC">Measured at the tap, °C; null where it was not.</param>
/// <param name="ObservedAt">When the tap ended; null for now.</param>
internal sealed record TapRequest(string Id, string Heat, string Ladle, string By, ScaleLoad Load, double? TemperatureC, DateTimeOffset? ObservedAt)
{
    public static TapRequest Read(ObjectReader body)
    {
        var load = ScaleLoad.Read(body);
        return new(
            body.NeededText("id"), body.NeededText("heat"), body.NeededText("ladle"), body.NeededText("by"), load,
            body.Number("temperatureC", NumberRule.LiquidIron), body.Instant("observedAt"));
    }
}
