using MeltShop.Metallurgy.Chain;

namespace MeltShop.Metallurgy.Route;

/// <summary>A material added in the ladle, the stream or the mould by rate: cover steel, inoculant.</summary>
/// <param name="Material">What it is.</param>
/// <param name="RatePercent">Weighed mass over the iron that it goes into, %, 0 or more.</param>
public sealed record RouteAddition(MaterialComposition Material, double RatePercent)
{
    /// <summary>The iron with it.</summary>
    internal Metal Into(Metal iron) => iron.Plus(Arrival.PerKilogram(Material), iron.Kg * RatePercent / 100);
}
