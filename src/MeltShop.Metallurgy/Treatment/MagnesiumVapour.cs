using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Vapour pressure of liquid magnesium: why it flares at iron's temperatures.</summary>
public static class MagnesiumVapour
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "magnesium-vapour",
        Name = "Vapour pressure of magnesium",
        Sentence = "The pressure at which magnesium boils in the iron.",
        Expression = "log₁₀ p = −7550/T − 1.41 log₁₀ T + 12.79, p in mmHg, T in K",
        Symbols = [new("T", "temperature", "K")],
        Unit = "atm",
        Sources = [Bibliography.MagnesiumVapour, Bibliography.HotTopics],
        Range = "Pure liquid magnesium, 650 to 1600 °C; over an alloy it is lower.",
        Doubt = "A print gives 4 atm at 1510 °C. The equation gives 4 atm at 1300 °C and 12 at 1510, and the printed boiling points (1090 to 1107 °C) side with it.",
        Code = $"{nameof(MagnesiumVapour)}.{nameof(PressureAtm)}",
        Example = new("1107 °C, a printed boiling point → 1.03 atm (by hand)", () => PressureAtm(1107), 1.03, 0.005),
    };

    /// <summary>Vapour pressure.</summary>
    /// <param name="temperatureC">°C, 650 to 1600.</param>
    /// <returns>Atmospheres (760 mmHg).</returns>
    public static double PressureAtm(double temperatureC)
    {
        var kelvin = temperatureC + 273.15;
        return Math.Pow(10, -7550 / kelvin - 1.41 * Math.Log10(kelvin) + 12.79) / 760;
    }
}
