using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

public abstract partial record Fade
{
    private const string Doubt =
        "No full printed table of time and magnesium was found. About 0.001 % a minute is printed for a ladle; slower at 1400 °C and low sulphur. "
        + "Fit the ladle's own samples, all taken a minute or more after the reaction.";

    /// <summary>The record of the exponential model.</summary>
    public static Formula ExponentialFormula { get; } = new()
    {
        Key = "fade-exponential",
        Name = "Magnesium fade, exponential",
        Sentence = "Magnesium left after some minutes, losing the same share every minute.",
        Expression = "Mg = Mg₀ · exp(−k t)",
        Symbols = [new("Mg₀", "magnesium at the end of the reaction", "%"), new("k", "rate, 0.010 to 0.045", "1/min"), new("t", "time", "min")],
        Unit = "%",
        Sources = [Bibliography.Fade],
        Range = "Up to about 30 minutes in one ladle; each re-ladling costs 0.007 to 0.010 % besides.",
        Doubt = Doubt,
        Code = $"{nameof(Fade)}.{nameof(After)}",
        Example = new("0.0450 %, k 0.025, 10 min → 0.0350 (by hand)", () => new Exponential(0.025).After(0.045, 10), 0.0350, 0.00005),
    };

    /// <summary>The record of the linear model.</summary>
    public static Formula LinearFormula { get; } = new()
    {
        Key = "fade-linear",
        Name = "Magnesium fade, linear",
        Sentence = "Magnesium left after some minutes, losing the same amount every minute.",
        Expression = "Mg = Mg₀ − a t, not below 0",
        Symbols = [new("Mg₀", "magnesium at the end of the reaction", "%"), new("a", "rate, customarily 0.001", "%/min"), new("t", "time", "min")],
        Unit = "%",
        Sources = [Bibliography.Cabanne, Bibliography.Fade],
        Range = "Up to about 20 minutes in one ladle; each re-ladling costs 0.007 to 0.010 % besides.",
        Doubt = Doubt,
        Code = $"{nameof(Fade)}.{nameof(After)}",
        Example = new("0.0450 %, 0.001 % a minute, 10 min → 0.0350 (by hand)", () => new Linear(0.001).After(0.045, 10), 0.0350, 1e-9),
    };
}
