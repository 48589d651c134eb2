using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Heat;

/// <summary>From the pouring temperature of the last mould back to the tap, each loss visible, in the order in which it happens.</summary>
/// <param name="PouringC">Least pouring temperature of the last mould, °C.</param>
/// <param name="Terms">The losses from the furnace on.</param>
public sealed record TemperatureBudget(double PouringC, IReadOnlyList<HeatLossTerm> Terms)
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "tapping-temperature",
        Name = "Tapping temperature",
        Sentence = "What the furnace must have so that the last mould gets its pouring temperature.",
        Expression = "T_tap = T_pour + stream + treatment + transfers + rate · minutes",
        Symbols = [new("T_pour", "least pouring temperature of the last mould", "°C"), new("stream …", "losses on the way", "K")],
        Unit = "°C",
        Sources = [Bibliography.Practice, Bibliography.LadleLosses],
        Range = "The shop's own losses by ladle and state of preheat; the first ladle of a shift is the worst.",
        Code = $"{nameof(TemperatureBudget)}.{nameof(TappingC)}",
        Example = new("1380 °C + stream 30 + treatment 50 + 12 min at 2 K/min → 1484 °C (by hand)",
            () => new TemperatureBudget(1380, [new("stream", 30), new("treatment", 50), Ladle(2, 12)]).TappingC, 1484, 1e-9),
    };

    /// <summary>Tapping temperature, °C.</summary>
    public double TappingC => PouringC + Terms.Sum(t => t.LossK);

    /// <summary>The loss of a standing ladle.</summary>
    /// <param name="kPerMinute">Rate, K/min.</param>
    /// <param name="minutes">Minutes from the tap to the end of the pour.</param>
    public static HeatLossTerm Ladle(double kPerMinute, double minutes) => new("ladle", kPerMinute * minutes);

    /// <summary>Temperature of the last mould from a tap.</summary>
    /// <param name="tappingC">Tapping temperature, °C.</param>
    public double LastMouldC(double tappingC) => tappingC - Terms.Sum(t => t.LossK);

    /// <summary>
    /// The loss that breaks the budget when the furnace must not exceed a temperature: the first one, in the order in which they
    /// happen, after which less than the pouring temperature is left.
    /// </summary>
    /// <param name="mostTappingC">Highest tapping temperature allowed, °C.</param>
    /// <returns>The term; null where the budget holds.</returns>
    public HeatLossTerm? BrokenBy(double mostTappingC)
    {
        var left = mostTappingC - PouringC;
        foreach (var term in Terms)
        {
            left -= term.LossK;
            if (left < 0) return term;
        }

        return null;
    }
}
