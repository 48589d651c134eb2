using MeltShop.Metallurgy.Pouring;
using MeltShop.Records.Reading.Charge;

namespace MeltShop.Records.Reading.Orders;

/// <summary>Heats of one furnace for the metal of a grade: all of the same size, each leaving the heel that is in the furnace now.</summary>
/// <param name="Needed">The metal.</param>
/// <param name="Count">How many.</param>
/// <param name="MeltKg">Liquid wanted in each, heel included, whole kg.</param>
public sealed record ProposedHeats(MetalNeeded Needed, int Count, double MeltKg)
{
    /// <summary>Null where the furnace is full of its heel: nothing can be tapped from a heat.</summary>
    public static ProposedHeats? Of(MetalNeeded needed, ChargeFurnaceView furnace)
    {
        ArgumentNullException.ThrowIfNull(needed);
        ArgumentNullException.ThrowIfNull(furnace);
        var heel = furnace.Heel?.Kg ?? 0;
        if (heel >= furnace.CapacityKg) return null;
        var count = OrderMetal.Heats(needed.Kg, furnace.CapacityKg, heel);
        return new(needed, count, Math.Min(furnace.CapacityKg, Math.Ceiling(heel + (needed.Kg / count))));
    }
}
