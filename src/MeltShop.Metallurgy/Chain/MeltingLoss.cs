using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Chain;

/// <summary>
/// What melting does to elements that are already in the liquid metal: shares that burn off, and points picked up from coke or
/// lining. A charge whose recoveries hold the losses already must not go through this step too.
/// </summary>
public sealed record MeltingLoss
{
    /// <summary>Share of an element that is lost, % of its mass, 0 to 100.</summary>
    public IReadOnlyDictionary<Element, double> LossPercent { get; init; } = new Dictionary<Element, double>();

    /// <summary>Points of an element that are picked up, % of the metal after the losses, 0 or more.</summary>
    public IReadOnlyDictionary<Element, double> PickUpPoints { get; init; } = new Dictionary<Element, double>();

    /// <summary>The metal after melting: lost masses leave it, picked-up masses join it.</summary>
    /// <param name="metal">The metal as charged.</param>
    public Metal After(Metal metal)
    {
        ArgumentNullException.ThrowIfNull(metal);
        var left = LossPercent.Aggregate(metal, (m, loss) => m.Without(loss.Key, m.ElementKg(loss.Key) * loss.Value / 100));
        var gained = PickUpPoints.ToDictionary(p => p.Key, p => left.Kg * p.Value / 100);
        return gained.Aggregate(left, (m, gain) => m.Plus(Metal.Of(gain.Value, Analysis.Of((gain.Key, 100)))));
    }
}
