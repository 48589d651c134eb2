using MeltShop.Metallurgy.Chain;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Cover steel on the treatment alloy: an addition to the iron before the magnesium meets it.</summary>
/// <param name="Material">What it is.</param>
/// <param name="Kg">Weighed, kg, 0 or more.</param>
public sealed record TreatmentCover(MaterialComposition Material, double Kg)
{
    /// <summary>The iron with it.</summary>
    internal Metal Into(Metal iron) => iron.Plus(Arrival.PerKilogram(Material), Kg);
}
