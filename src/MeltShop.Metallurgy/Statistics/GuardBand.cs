using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Statistics;

/// <summary>Decision against limits with a stated rule: a value inside a guard band about a limit is too close to tell.</summary>
public static class GuardBand
{
    /// <summary>Difference that counts as none, percentage points.</summary>
    private const double Tolerance = 1e-6;

    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "guard-band",
        Name = "Guard band",
        Sentence = "How far from a limit a mean must lie before it can be said which side it is on.",
        Expression = "g = Φ⁻¹(confidence) · s_r / √n",
        Symbols = [new("s_r", "repeatability as standard deviation", "%"), new("n", "burns in the mean", "1"), new("confidence", "one-sided", "1")],
        Unit = "%",
        Sources = [Bibliography.Iso17025],
        Range = "Repeatability of the shop's own instrument; calibration and sampling are not in it.",
        Code = $"{nameof(GuardBand)}.{nameof(Width)}",
        Example = new("s_r 0.02, 4 burns, 95 % → 0.0164 (by hand)", () => Width(0.02, 4, 95), 0.01645, 0.000005),
    };

    /// <summary>Width of the guard band.</summary>
    /// <param name="repeatability">Standard deviation of one burn, percentage points, 0 or more.</param>
    /// <param name="burns">Burns in the mean, 1 or more.</param>
    /// <param name="confidencePercent">One-sided confidence, 50 to under 100; 50 gives no band.</param>
    public static double Width(double repeatability, int burns, double confidencePercent) =>
        WidthByFactor(repeatability, burns, Normal.Quantile(confidencePercent / 100));

    /// <summary>Width of a guard band that was set as a multiple of the repeatability.</summary>
    /// <param name="repeatability">Standard deviation of one result, percentage points, 0 or more.</param>
    /// <param name="results">Results in the mean, 1 or more.</param>
    /// <param name="factor">The multiple, 0 or more; in the record it is Φ⁻¹(confidence).</param>
    public static double WidthByFactor(double repeatability, int results, double factor) => factor * repeatability / Math.Sqrt(results);

    /// <summary>Decides a mean against its limits.</summary>
    /// <param name="value">The mean, unrounded.</param>
    /// <param name="least">Least allowed; null where there is none.</param>
    /// <param name="most">Most allowed; null where there is none.</param>
    /// <param name="width">Guard band, 0 or more.</param>
    public static LimitVerdict Decide(double value, double? least, double? most, double width)
    {
        if (value < least - width - Tolerance || value > most + width + Tolerance) return LimitVerdict.Out;
        return value < least + width - Tolerance || value > most - width + Tolerance ? LimitVerdict.TooClose : LimitVerdict.In;
    }
}
