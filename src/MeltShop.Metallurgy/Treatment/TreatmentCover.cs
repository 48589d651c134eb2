using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Cover steel on the treatment alloy: an addition to the iron before the magnesium meets it.</summary>
/// <param name="Material">What it is.</param>
/// <param name="Kg">Weighed, kg, 0 or more.</param>
public sealed record TreatmentCover(MaterialComposition Material, double Kg)
{
    /// <summary>The iron with it.</summary>
    internal Metal Into(Metal iron) => iron.Plus(Arrival.PerKilogram(Material), Kg);

    /// <summary>What of it is liquid, kg, and its sulphur, %.</summary>
    internal (double Kg, double SulphurPercent) Melted
    {
        get
        {
            var metal = Into(Metal.None);
            return (metal.Kg, metal.Percent(Element.S));
        }
    }
}
