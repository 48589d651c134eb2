using MeltShop.Records.Sites;

namespace MeltShop.Web.Components.Units;

/// <summary>
/// The units of the shop. They are spoken like the culture: whoever shows or reads a number asks <see cref="Current"/>, and the pipeline
/// says for each request, and so for the circuit that begins with it, whose they are.
/// </summary>
public sealed record ShopUnits(Measure Mass, Measure Temperature)
{
    private const string MassName = "massUnit", TemperatureName = "temperatureUnit";

    private static readonly AsyncLocal<Func<ShopUnits>?> Spoken = new();

    private static readonly IReadOnlyList<Measure> Masses = [Measure.Kilogram, Measure.Pound], Temperatures = [Measure.Celsius, Measure.Fahrenheit];

    /// <summary>The units of the records.</summary>
    public static ShopUnits Recorded { get; } = new(Measure.Kilogram, Measure.Celsius);

    /// <summary>The units of the shop that is served here.</summary>
    public static ShopUnits Current => Spoken.Value?.Invoke() ?? Recorded;

    public Measure TemperatureDifference => Temperature.IsRecorded ? Measure.Kelvin : Measure.FahrenheitDegree;

    /// <summary>For how much iron or material a price or an energy is said.</summary>
    public Measure PerTonne => Mass.IsRecorded ? Measure.PerTonne : Measure.PerShortTon;

    /// <summary>Asks <paramref name="shop"/> from here on, in all that this flow of work begins.</summary>
    public static void Speak(Func<ShopUnits> shop) => Spoken.Value = shop;

    public static ShopUnits Of(MassUnit mass, TemperatureUnit temperature) => new(
        mass == MassUnit.Pound ? Measure.Pound : Measure.Kilogram, temperature == TemperatureUnit.Fahrenheit ? Measure.Fahrenheit : Measure.Celsius);

    public Measure Of(Dimension dimension) => dimension switch
    {
        Dimension.Mass => Mass,
        Dimension.Temperature => Temperature,
        Dimension.TemperatureDifference => TemperatureDifference,
        Dimension.PerTonne => PerTonne,
        _ => Measure.None,
    };

    /// <summary>What a text that was typed in these units must say of itself wherever it waits: nothing where they are those of the records.</summary>
    public IEnumerable<KeyValuePair<string, string>> About()
    {
        if (!Mass.IsRecorded) yield return new(MassName, Mass.Sign);
        if (!Temperature.IsRecorded) yield return new(TemperatureName, Temperature.Sign);
    }

    /// <summary>The units in which a text was typed.</summary>
    /// <exception cref="BadHttpRequestException">There is no such unit.</exception>
    public static ShopUnits Told(IReadOnlyDictionary<string, string> about)
    {
        ArgumentNullException.ThrowIfNull(about);
        return new(Find(Masses, about.GetValueOrDefault(MassName)), Find(Temperatures, about.GetValueOrDefault(TemperatureName)));
    }

    private static Measure Find(IReadOnlyList<Measure> known, string? sign) => sign is null
        ? known[0]
        : known.FirstOrDefault(measure => measure.Sign == sign) ?? throw new BadHttpRequestException($"There is no unit {sign}.");
}
