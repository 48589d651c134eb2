using MeltShop.Metallurgy;
using MeltShop.Records;
using MeltShop.Records.Heats;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>What a weighing of a heat cannot be, whoever says it: a slipped point, or the clock of a scale that runs wrong.</summary>
internal static class WeighingBounds
{
    /// <summary>Cold charge weighs more than the iron it becomes: who enters the whole charge of a full furnace at once still may, down to a yield of 80 %.</summary>
    private const double MostOfCapacity = 1.25;

    /// <returns><c>weighing.overFurnace</c> with what the furnace holds and the most that is taken, kg: no single load is more, whether the furnace is overfilled or not. Null otherwise.</returns>
    public static async Task<Finding?> OverFurnace(this RecordsContext db, Heat heat, double kg, CancellationToken cancellation)
    {
        var capacityKg = await db.Furnaces.Where(f => f.Id == heat.FurnaceId).Select(f => f.CapacityKg).SingleAsync(cancellation);
        return kg > MostOfCapacity * capacityKg ? new("kg", "weighing.overFurnace", capacityKg, MostOfCapacity * capacityKg) : null;
    }

    /// <returns><c>time.beforeHeat</c> where it was weighed before there was a heat to weigh for, two clocks that each may be wrong by the tolerance allowed for. Null otherwise.</returns>
    public static Finding? BeforeHeat(Heat heat, DateTimeOffset at, TimeSpan tolerance, string path = "observedAt") =>
        at < heat.StartedAt - (2 * tolerance) ? new(path, "time.beforeHeat", heat.Number, heat.StartedAt) : null;
}
