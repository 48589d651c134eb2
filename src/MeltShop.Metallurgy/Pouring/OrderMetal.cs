using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Pouring;

/// <summary>Metal that an order still needs, and the heats that give it.</summary>
public static class OrderMetal
{
    /// <summary>A furnace that is filled to the last gram is not a heat too many for a double's last digit.</summary>
    private const double Nothing = 1e-9;

    /// <summary>The record of the metal.</summary>
    public static Formula KgFormula { get; } = new()
    {
        Key = "order-metal",
        Name = "Metal of an order",
        Sentence = "The metal that must be poured for the castings of an order that are left.",
        Expression = "metal = pieces · casting · 100 / yield",
        Symbols = [new("pieces", "castings left to pour", "1"), new("casting", "mass of one of them", "kg"), new("yield", "castings of the mould over metal poured", "%")],
        Unit = "kg",
        Sources = [Bibliography.Practice],
        Range = "Yield over 0 up to 100 %. Castings that will be rejected, pigged and spilt metal come on top.",
        Code = $"{nameof(OrderMetal)}.{nameof(Kg)}",
        Example = new("12 castings of 85 kg at a yield of 68 % need 12 · 125 = 1500 kg (common practice, no source)", () => Kg(12, 85, 68), 1500, 1e-9),
    };

    /// <summary>The record of the heats.</summary>
    public static Formula HeatsFormula { get; } = new()
    {
        Key = "order-heats",
        Name = "Heats for a mass",
        Sentence = "How many heats of a furnace give a mass, when each leaves a heel.",
        Expression = "heats = metal / (capacity − heel), rounded up",
        Symbols = [new("metal", "metal to be poured", "kg"), new("capacity", "iron in the full furnace", "kg"), new("heel", "what each heat leaves in it", "kg")],
        Unit = "1",
        Sources = [Bibliography.Practice],
        Range = "Heel under the capacity.",
        Code = $"{nameof(OrderMetal)}.{nameof(Heats)}",
        Example = new("14.1 t from a furnace of 6 t with a heel of 600 kg: 5400 kg a heat, 3 heats (common practice, no source)", () => Heats(14_100, 6000, 600), 3, 0),
    };

    /// <summary>Castings left to pour: what was poured beyond the order leaves none, and owes none.</summary>
    /// <param name="ordered">Castings ordered, 0 or more.</param>
    /// <param name="poured">Castings poured, 0 or more.</param>
    public static int PiecesLeft(int ordered, int poured) => Math.Max(0, ordered - poured);

    /// <summary>Metal to be poured.</summary>
    /// <param name="pieces">Castings left to pour, 0 or more.</param>
    /// <param name="castingKg">Mass of one casting, kg, 0 or more.</param>
    /// <param name="yieldPercent">Castings of the mould over metal poured, %, over 0 to 100.</param>
    /// <returns>Kilograms; 1500 for 12 of 85 kg at 68 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The yield is not over 0 up to 100, or one of the others is negative.</exception>
    public static double Kg(int pieces, double castingKg, double yieldPercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(pieces);
        return pieces * PouredMass.Kg(castingKg, yieldPercent);
    }

    /// <summary>Heats that give a mass.</summary>
    /// <param name="metalKg">Metal to be poured, kg, 0 or more.</param>
    /// <param name="capacityKg">Iron in the full furnace, kg, over the heel.</param>
    /// <param name="heelKg">What each heat leaves in it, kg, 0 or more.</param>
    /// <returns>A whole number; 3 for 14 100 kg of 6000 with 600.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Nothing is left to be tapped, or a mass is negative.</exception>
    public static int Heats(double metalKg, double capacityKg, double heelKg)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(metalKg);
        ArgumentOutOfRangeException.ThrowIfNegative(heelKg);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(capacityKg, heelKg);
        return (int)Math.Ceiling(metalKg / (capacityKg - heelKg) - Nothing);
    }
}
