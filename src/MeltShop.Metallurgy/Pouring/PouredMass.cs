using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Pouring;

/// <summary>Liquid metal that a casting needs: gates, runners and feeders included.</summary>
public static class PouredMass
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "poured-mass",
        Name = "Poured mass",
        Sentence = "The metal that must be poured for a casting.",
        Expression = "poured = casting · 100 / yield",
        Symbols = [new("casting", "mass of the casting", "kg"), new("yield", "casting over poured metal", "%")],
        Unit = "kg",
        Sources = [Bibliography.Practice],
        Range = "Yield over 0 up to 100 %.",
        Code = $"{nameof(PouredMass)}.{nameof(Kg)}",
        Example = new("a casting of 40 t at the yield of 5/6 needs 48 t (common practice, no source)", () => Kg(40_000, 100.0 * 5 / 6), 48_000, 1e-6),
    };

    /// <summary>Metal to be poured.</summary>
    /// <param name="castingKg">Mass of the casting, kg, 0 or more.</param>
    /// <param name="yieldPercent">Casting over poured metal, %, over 0 to 100.</param>
    /// <returns>Kilograms; 48 000 for 40 000 at 83.33 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The yield is not over 0 up to 100, or the mass is negative.</exception>
    public static double Kg(double castingKg, double yieldPercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(castingKg);
        if (!(yieldPercent is > 0 and <= 100)) throw new ArgumentOutOfRangeException(nameof(yieldPercent), yieldPercent, "A yield lies over 0 and up to 100 %.");
        return castingKg * 100 / yieldPercent;
    }
}
