using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Chain;

/// <summary>
/// What melting does to elements that are already in the liquid metal: shares that burn off, and points picked up from coke or
/// lining. A charge whose recoveries hold the losses already must not go through this step too.
/// </summary>
public sealed record MeltingLoss
{
    // Of the metal's mass: what rounding may make of a pick-up that is just all of an element.
    private const double Rounding = 1e-12;

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

    /// <summary>The metal that must be charged so that melting leaves this one: the same step turned round.</summary>
    /// <param name="metal">The metal wanted after melting.</param>
    /// <returns>The metal as charged; null where it is not to be had: more of an element is picked up than is wanted, or all of it burns off.</returns>
    public Metal? Before(Metal metal)
    {
        ArgumentNullException.ThrowIfNull(metal);
        var leftKg = metal.Kg / (1 + PickUpPoints.Values.Sum() / 100);
        var before = metal;
        foreach (var (element, points) in PickUpPoints)
        {
            if (leftKg * points / 100 > metal.ElementKg(element) + Rounding * metal.Kg) return null;
            before = before.Without(element, Math.Min(leftKg * points / 100, metal.ElementKg(element)));
        }

        foreach (var (element, percent) in LossPercent)
        {
            var kept = 1 - percent / 100;
            if (before.ElementKg(element) == 0) continue;
            if (kept <= 0) return null;
            before = before.Plus(Metal.Of(before.ElementKg(element) * (1 / kept - 1), Analysis.Of((element, 100))));
        }

        return before;
    }
}
