using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>The general addition formula as printed: a check beside <see cref="TreatmentBalance"/>, which is what the app works with.</summary>
public static class MagnesiumAddition
{
    /// <summary>The fade that the formula is printed with, of an open ladle: % magnesium a minute.</summary>
    public const double FadePercentPerMinute = 0.001;

    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "magnesium-addition-printed",
        Name = "Treatment alloy, printed general formula",
        Sentence = "The customary estimate of the treatment alloy.",
        Expression = "W = W_iron · (Mg + 0.76 (S_i − S_f) + 0.001 t) / (Mg_alloy · R) · (T/1450)²",
        Symbols =
        [
            new("W_iron", "iron treated", "kg"), new("Mg", "magnesium wanted", "%"), new("S_i, S_f", "sulphur before, after", "%"),
            new("t", "time, printed as to the beginning of pouring; use the end of the pour of the last mould", "min"),
            new("Mg_alloy", "magnesium of the alloy", "%"), new("R", "recovery at 1450 °C", "1"), new("T", "treatment temperature", "°C"),
        ],
        Unit = "kg",
        Sources = [Bibliography.Cabanne],
        Range = "Sulphur before not under sulphur after. R belongs to 1450 °C: a recovery found at another temperature must not meet the (T/1450)² term.",
        Doubt = "It leaves out the mass of the alloy; the balance gives 1.4 % more for the example.",
        Code = $"{nameof(MagnesiumAddition)}.{nameof(AlloyKg)}",
        Example = new("1000 kg, Mg 0.045, S 0.015 → 0.010, 5 min, 6 % Mg, R 50 %, 1450 °C → 17.93 kg (by hand)",
            () => AlloyKg(1000, 0.045, 0.015, 0.010, 5, 6, 50, 1450), 17.93, 0.005),
    };

    /// <summary>Treatment alloy by the printed general formula.</summary>
    /// <param name="ironKg">Iron treated, kg.</param>
    /// <param name="mgPercent">Magnesium wanted, %.</param>
    /// <param name="sulphurPercent">Sulphur before, %.</param>
    /// <param name="sulphurLeftPercent">Sulphur after, %.</param>
    /// <param name="minutes">Minutes of fade, at <see cref="FadePercentPerMinute"/>.</param>
    /// <param name="alloyMgPercent">Magnesium of the alloy, %.</param>
    /// <param name="recoveryPercent">Recovery at 1450 °C, % (50, not 0.5).</param>
    /// <param name="temperatureC">Treatment temperature, °C.</param>
    /// <returns>Kilograms; not a number where sulphur would rise.</returns>
    public static double AlloyKg(
        double ironKg, double mgPercent, double sulphurPercent, double sulphurLeftPercent, double minutes,
        double alloyMgPercent, double recoveryPercent, double temperatureC) =>
        sulphurPercent < sulphurLeftPercent
            ? double.NaN
            : ironKg * (mgPercent + 0.76 * (sulphurPercent - sulphurLeftPercent) + FadePercentPerMinute * minutes)
                / (alloyMgPercent * recoveryPercent / 100) * Math.Pow(temperatureC / 1450, 2);
}
