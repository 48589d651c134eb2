namespace MeltShop.Metallurgy.Route;

/// <summary>Least, aim and most of a percent or a quantity, each in its unit; null where there is none.</summary>
/// <param name="Least">Not less than this.</param>
/// <param name="Aim">Best here; between the two.</param>
/// <param name="Most">Not more than this.</param>
public sealed record Bounds(double? Least = null, double? Aim = null, double? Most = null)
{
    /// <summary>Difference under which a value still counts as on a bound, in the unit of the bound.</summary>
    public const double Tolerance = 1e-6;

    /// <summary>True where a value lies inside, a bound included.</summary>
    public bool Hold(double value) => !(value < Least - Tolerance) && !(value > Most + Tolerance);

    /// <summary>Every bound put through the same straight line: factor × bound + shift; a negative factor turns least and most round.</summary>
    public Bounds Scaled(double factor, double shift)
    {
        var (least, most) = (factor * Least + shift, factor * Most + shift);
        return factor >= 0 ? new(least, factor * Aim + shift, most) : new(most, factor * Aim + shift, least);
    }
}
