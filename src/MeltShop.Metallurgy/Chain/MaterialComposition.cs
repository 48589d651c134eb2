using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Chain;

/// <summary>What a weighed kilogram of a material, addition or alloy consists of, and how much of it reaches the liquid metal.</summary>
/// <remarks>
/// Yield multiplies all of the weighed mass (dirt, rust, slag formers leave); recovery multiplies what is left of one element.
/// A recovery quoted on the weighed mass, as suppliers of carburisers and ferro-alloys do, goes with a yield of 100.
/// </remarks>
public sealed record MaterialComposition
{
    /// <summary>Analysis of the metal; an element absent is 0.</summary>
    public required Analysis Analysis { get; init; }

    /// <summary>Share of the weighed mass that melts in, over 0 to 100 %.</summary>
    public double MetallicYieldPercent { get; init; } = 100;

    /// <summary>Share of an element that arrives in the liquid metal, 0 to 100 %; 100 where not named.</summary>
    public IReadOnlyDictionary<Element, double> RecoveryPercent { get; init; } = new Dictionary<Element, double>();

    /// <summary>Recovery of one element, 0 to 100 %.</summary>
    public double Recovery(Element element) => RecoveryPercent.GetValueOrDefault(element, 100);
}
