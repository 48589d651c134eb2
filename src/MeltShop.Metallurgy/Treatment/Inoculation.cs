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

    /// <summary>The record of the silicon that an inoculant brings.</summary>
    public static Formula PickupFormula { get; } = new()
    {
        Key = "inoculant-silicon",
        Name = "Silicon pickup of inoculation",
        Sentence = "How many points of silicon an inoculant adds to the iron; its own mass dilutes.",
        Expression = "ΔSi = 100 (M x/100 + m e) / (M + m L) − x",
        Symbols =
        [
            new("M, x", "iron before, its silicon", "kg, %"), new("m", "inoculant, weighed", "kg"),
            new("e", "silicon that arrives per kilogram weighed", "kg/kg"), new("L", "liquid metal that arrives per kilogram weighed", "kg/kg"),
        ],
        Unit = "percentage points",
        Sources = [Bibliography.Balance],
        Range = "Any mass of 0 or more; the recovery is the inoculant's own.",
        Code = $"{nameof(Inoculation)}.{nameof(SiliconPickupPercent)}",
        Example = new("1000 kg of 2 % Si, 4 kg of 75 % at 90 % recovery: 22.7 kg in 1003.7 kg → 0.26163 (by hand)",
            () => SiliconPickupPercent(
                Metal.Of(1000, Analysis.Of((Element.Si, 2))),
                new() { Analysis = Analysis.Of((Element.Si, 75)), RecoveryPercent = new Dictionary<Element, double> { [Element.Si] = 90 } },
                4),
            100 * 22.7 / 1003.7 - 2, 1e-9),
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

    /// <summary>Silicon after less silicon before; the dilution by the inoculant's mass is in it.</summary>
    /// <param name="iron">The iron before.</param>
    /// <param name="inoculant">What the inoculant holds and how much of it arrives.</param>
    /// <param name="inoculantKg">Weighed mass, kg, 0 or more.</param>
    /// <returns>Percentage points; negative where the inoculant is poorer in silicon than the iron.</returns>
    public static double SiliconPickupPercent(Metal iron, MaterialComposition inoculant, double inoculantKg)
    {
        ArgumentNullException.ThrowIfNull(iron);
        return After(iron, inoculant, inoculantKg).Percent(Element.Si) - iron.Percent(Element.Si);
    }
}
