namespace MeltShop.Web.Pages.Heats;

/// <summary>Where a bath temperature lies against the furnace's highest.</summary>
public enum Superheat
{
    Clear,
    Near,
    Over,
}

public static class SuperheatLimit
{
    /// <summary>From here on the limit is named beside the temperature, K below it: about what a dip probe and the next minutes of power are good for (common practice, no source).</summary>
    public const double NearK = 30;

    /// <summary>Clear where the furnace has no limit entered: the caution then says that it has none.</summary>
    /// <param name="temperatureC">Bath, °C.</param>
    /// <param name="highestC">The furnace's highest bath temperature, °C.</param>
    public static Superheat Of(double temperatureC, double? highestC) =>
        highestC is not { } highest || temperatureC < highest - NearK ? Superheat.Clear
        : temperatureC <= highest ? Superheat.Near
        : Superheat.Over;
}
