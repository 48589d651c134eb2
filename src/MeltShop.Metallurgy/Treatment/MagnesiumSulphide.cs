using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Desulphurising by magnesium: MgS leaves the iron.</summary>
public static class MagnesiumSulphide
{
    /// <summary>Kilograms of magnesium bound by a kilogram of sulphur, 24.305/32.06 = 0.7581 (printed as 0.76).</summary>
    public static double MagnesiumPerSulphur => Element.Mg.AtomicMass / Element.S.AtomicMass;

    /// <summary>
    /// Iron with magnesium in it once its sulphide has left: sulphur falls to what is left as a rule, if the magnesium suffices;
    /// it never rises.
    /// </summary>
    /// <param name="iron">Iron into which the alloy has dissolved, all its recovered magnesium still in it.</param>
    /// <param name="sulphurLeftPercent">Sulphur that stays, % of the mass after.</param>
    public static Metal Leaves(Metal iron, double sulphurLeftPercent)
    {
        ArgumentNullException.ThrowIfNull(iron);
        var left = sulphurLeftPercent / 100;
        var (sulphur, magnesium) = (iron.ElementKg(Element.S), iron.ElementKg(Element.Mg));
        if (sulphur <= left * iron.Kg) return iron;
        var wanted = (sulphur - left * iron.Kg) / (1 - left * (1 + MagnesiumPerSulphur));
        if (MagnesiumPerSulphur * wanted < magnesium) return iron.Without(Element.S, wanted).Without(Element.Mg, MagnesiumPerSulphur * wanted);

        // Too little magnesium: all of it goes, and as much sulphur as it can bind.
        return iron.Without(Element.S, Math.Min(sulphur, magnesium / MagnesiumPerSulphur)).Without(Element.Mg, magnesium);
    }
}
