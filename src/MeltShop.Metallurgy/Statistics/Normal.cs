using Distribution = MathNet.Numerics.Distributions.Normal;

namespace MeltShop.Metallurgy.Statistics;

/// <summary>The standard normal distribution.</summary>
public static class Normal
{
    /// <summary>The value that is not exceeded with a probability: Φ⁻¹(p).</summary>
    /// <param name="probability">Over 0 and under 1.</param>
    /// <returns>Standard deviations from the mean, right to the last digits of a double; 1.644854 for 0.95.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The probability is not between 0 and 1.</exception>
    public static double Quantile(double probability)
    {
        if (!(probability > 0 && probability < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "A probability lies over 0 and under 1.");
        }

        return Distribution.InvCDF(0, 1, probability);
    }

    /// <summary>Probability that a value is not exceeded: Φ(z).</summary>
    /// <param name="z">Standard deviations from the mean.</param>
    /// <returns>0 to 1; 0.95 for 1.644854.</returns>
    public static double Cumulative(double z) => Distribution.CDF(0, 1, z);
}
