using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Inoculation of a ladle or a stream: an addition by rate.</summary>
public static class Inoculation
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "inoculant",
        Name = "Inoculant by rate",
        Sentence = "The inoculant for an amount of iron.",
        Expression = "m = M · rate / 100",
        Symbols = [new("M", "iron to be inoculated", "kg"), new("rate", "of that iron", "%")],
        Unit = "kg",
        Sources = [Bibliography.Practice],
        Range = "0.05 to 1.0 % by place; its silicon counts in the final silicon.",
        Code = $"{nameof(Inoculation)}.{nameof(InoculantKg)}",
        Example = new("1000 kg at 0.5 % → 5 kg (by hand)", () => InoculantKg(1000, 0.5), 5, 1e-12),
    };

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
