using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Chain;

/// <summary>
/// What holding does to a bath by the crucible reaction, SiO₂ + 2 [C] = [Si] + 2 CO: carbon leaves as gas, silicon comes from the
/// lining. How fast is the furnace's own affair and not foretold; which way, <see cref="CrucibleReaction.Drift"/> says.
/// </summary>
/// <param name="CarbonLostKg">Carbon that leaves, kg; negative below equilibrium, where silicon burns and carbon is spared.</param>
public sealed record CrucibleHolding(double CarbonLostKg)
{
    /// <summary>The bath after holding.</summary>
    /// <param name="bath">The bath before.</param>
    /// <exception cref="ArgumentOutOfRangeException">The bath does not hold so much of the element that leaves.</exception>
    public Metal After(Metal bath)
    {
        ArgumentNullException.ThrowIfNull(bath);
        var siliconKg = CrucibleReaction.SiliconChange(-CarbonLostKg);
        return CarbonLostKg >= 0
            ? Gain(bath.Without(Element.C, CarbonLostKg), Element.Si, siliconKg)
            : Gain(bath.Without(Element.Si, -siliconKg), Element.C, -CarbonLostKg);
    }

    /// <summary>The bath that holding turns into this one: the same reaction the other way.</summary>
    /// <param name="bath">The bath wanted after holding.</param>
    /// <exception cref="ArgumentOutOfRangeException">The bath does not hold so much of the element that came in.</exception>
    public Metal Before(Metal bath) => new CrucibleHolding(-CarbonLostKg).After(bath);

    private static Metal Gain(Metal bath, Element element, double kg) => bath.Plus(Metal.Of(kg, Analysis.Of((element, 100))));
}
