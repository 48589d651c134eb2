using Distribution = MathNet.Numerics.Distributions.StudentT;

namespace MeltShop.Metallurgy.Statistics;

/// <summary>Student's t distribution.</summary>
public static class StudentT
{
    /// <summary>The value that is exceeded with a probability.</summary>
    /// <param name="tailProbability">Probability of the upper tail, over 0 up to 0.5.</param>
    /// <param name="degreesOfFreedom">2 or more.</param>
    /// <returns>t, right to at least ten digits; 2.919986 for 0.05 and 2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A parameter lies outside its range.</exception>
    public static double UpperQuantile(double tailProbability, int degreesOfFreedom)
    {
        if (!(tailProbability is > 0 and <= 0.5))
        {
            throw new ArgumentOutOfRangeException(nameof(tailProbability), tailProbability, "An upper tail lies over 0 and up to 0.5.");
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(degreesOfFreedom, 2);
        // The library stops at 1e-12 of probability, which is much in a far tail: a Newton step on the tail itself closes the gap.
        var t = Distribution.InvCDF(0, 1, degreesOfFreedom, tailProbability);
        return -(t - (Distribution.CDF(0, 1, degreesOfFreedom, t) - tailProbability) / Distribution.PDF(0, 1, degreesOfFreedom, t));
    }
}
