using MeltShop.Metallurgy.Chain;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Cover steel on the treatment alloy: an addition to the iron before the magnesium meets it.</summary>
/// <param name="Material">What it is.</param>
/// <param name="Kg">Weighed, kg, 0 or more.</param>
public sealed record TreatmentCover(MaterialComposition Material, double Kg)
{
    /// <summary>
    /// What 1 % of cover steel takes of the iron's carbon away, percentage points, about: next to none is in it, and it thins iron of 3.6 to 4 % C by a hundredth. For words only;
    /// what a cover does is reckoned from its analysis.
    /// </summary>
    public const double CarbonTakenPercent = 0.04;

    /// <summary>The iron with it.</summary>
    internal Metal Into(Metal iron) => iron.Plus(Arrival.PerKilogram(Material), Kg);
}
