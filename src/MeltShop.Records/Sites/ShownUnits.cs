namespace MeltShop.Records.Sites;

/// <summary>In what the shop's people weigh. The records are in kg whatever it is.</summary>
public enum MassUnit
{
    Kilogram,

    /// <summary>The international avoirdupois pound.</summary>
    Pound,
}

/// <summary>In what the shop's people say a temperature. The records are in °C whatever it is.</summary>
public enum TemperatureUnit
{
    Celsius,
    Fahrenheit,
}
