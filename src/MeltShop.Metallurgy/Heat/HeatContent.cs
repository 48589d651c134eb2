using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Heat;

/// <summary>Heat content of liquid cast iron over the cold charge.</summary>
public static class HeatContent
{
    /// <summary>Heat that a tonne of liquid iron takes per kelvin, kWh: 46.02 J/(mol·K) over 55.845 g/mol.</summary>
    public const double KWhPerTonneKelvin = 0.23;

    private const double At1480 = 385;

    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "heat-content",
        Name = "Heat content of cast iron",
        Sentence = "The heat a tonne takes from the cold charge to liquid iron of a temperature, without any loss.",
        Expression = "H = 385 + 0.23 (T − 1480)",
        Symbols = [new("T", "temperature of the liquid iron", "°C")],
        Unit = "kWh/t",
        Sources = [Bibliography.Doetsch, Bibliography.Thermochemistry],
        Range = "1250 to 1600 °C, all liquid.",
        Doubt = "340 kWh/t, often quoted, is pure iron at about 1447 °C: too low for cast iron, whose carbon must be heated and dissolved.",
        Code = $"{nameof(HeatContent)}.{nameof(KWhPerTonne)}",
        Example = new("1480 °C → 385 kWh/t (Doetsch, printed)", () => KWhPerTonne(1480), 385, 0.5),
    };

    /// <summary>Heat content at a temperature.</summary>
    /// <param name="temperatureC">°C, 1250 to 1600.</param>
    /// <returns>kWh per tonne; 396.5 at 1530 °C.</returns>
    public static double KWhPerTonne(double temperatureC) => At1480 + KWhPerTonneKelvin * (temperatureC - 1480);
}
