namespace MeltShop.Metallurgy.Heat;

/// <summary>A temperature at a time.</summary>
/// <param name="Minutes">Minutes from any common start.</param>
/// <param name="TemperatureC">°C.</param>
public readonly record struct TemperatureReading(double Minutes, double TemperatureC)
{
    /// <summary>Minutes spent above a temperature, the bath taken to change evenly between readings.</summary>
    /// <param name="readings">In order of time.</param>
    /// <param name="limitC">The temperature, °C: the boiling temperature of the crucible reaction, say.</param>
    public static double MinutesAbove(IReadOnlyList<TemperatureReading> readings, double limitC)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var minutes = 0.0;
        for (var i = 1; i < readings.Count; i++)
        {
            var (from, to) = (readings[i - 1], readings[i]);
            var (high, low) = (Math.Max(from.TemperatureC, to.TemperatureC), Math.Min(from.TemperatureC, to.TemperatureC));
            var share = low >= limitC ? (high > limitC ? 1 : 0) : high <= limitC ? 0 : (high - limitC) / (high - low);
            minutes += share * (to.Minutes - from.Minutes);
        }

        return minutes;
    }
}
