using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Inoculation of a ladle or a stream: an addition by rate.</summary>
public static class Inoculation
{
    /// <summary>Inoculant for a rate.</summary>
    /// <param name="ironKg">Iron to be inoculated, kg.</param>
    /// <param name="ratePercent">Rate, % of that iron: 0.2 for most grey irons in the ladle, up to 0.75 for critical ductile irons.</param>
    /// <returns>Kilograms.</returns>
    public static double InoculantKg(double ironKg, double ratePercent) => ironKg * ratePercent / 100;

    /// <summary>The iron after inoculation.</summary>
    public static Metal After(Metal iron, MaterialComposition inoculant, double inoculantKg)
    {
        ArgumentNullException.ThrowIfNull(iron);
        return iron.Plus(Arrival.PerKilogram(inoculant), inoculantKg);
    }

    /// <summary>Silicon after less silicon before, percentage points; the dilution by the inoculant's mass is in it.</summary>
    public static double SiliconPickupPercent(Metal iron, MaterialComposition inoculant, double inoculantKg)
    {
        ArgumentNullException.ThrowIfNull(iron);
        return After(iron, inoculant, inoculantKg).Percent(Element.Si) - iron.Percent(Element.Si);
    }
}
