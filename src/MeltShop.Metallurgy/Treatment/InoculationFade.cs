using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>
/// How inoculation fades after its own last addition: an estimate of this app, no published law. No half-life was found in print;
/// a shop fits both numbers to its nodule counts. The final silicon does not tell: it stays while the effect goes.
/// </summary>
/// <param name="Minutes">
/// Time in which the passing part falls to 37 %, min, over 0; 5 for calcium and aluminium or strontium, 8 to 10 for barium or
/// zirconium (assumed).
/// </param>
/// <param name="Lasting">Part of the effect that stays, 0 to 1; 0.4 (assumed).</param>
public sealed record InoculationFade(double Minutes, double Lasting)
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "inoculation-fade",
        Name = "Inoculation fade, estimate",
        Sentence = "Share of the first effect that is left.",
        Expression = "E = E_∞ + (1 − E_∞) exp(−t/τ)",
        Symbols = [new("E_∞", "lasting part", "1"), new("τ", "time", "min"), new("t", "since the last inoculation", "min")],
        Unit = "1",
        Sources = [new("inoculation-fade", "Estimate of this app", Standing.Remembered)],
        Range = "An aid to compare pouring times of one shop. Houses set limits of 6 to 24 minutes; one study found no loss up to 16.",
        Doubt = "Both numbers are assumptions until the shop has fitted them.",
        Code = $"{nameof(InoculationFade)}.{nameof(Effect)}",
        Example = new("τ 5 min, 0.4 lasting, after 5 min → 0.6207 (by hand)", () => new InoculationFade(5, 0.4).Effect(5), 0.6207, 0.00005),
    };

    /// <summary>Share of the first effect that is left.</summary>
    /// <param name="minutes">Minutes since the last inoculation, 0 or more.</param>
    public double Effect(double minutes) => Lasting + (1 - Lasting) * Math.Exp(-minutes / Minutes);
}
