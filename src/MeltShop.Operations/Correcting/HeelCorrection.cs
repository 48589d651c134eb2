using MeltShop.Metallurgy;
using MeltShop.Operations.Heats;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>Puts right what was in the furnace when a heat started: the heel that it began with, and the ledger from there on.</summary>
internal static class HeelCorrection
{
    /// <returns>What stands against it; null where it was done.</returns>
    public static async Task<Finding?> CorrectHeel(this Writing writing, Heat heat, double kg, string reason, CancellationToken cancellation)
    {
        var db = writing.Db;
        var capacity = await db.Furnaces.Where(f => f.Id == heat.FurnaceId).Select(f => f.CapacityKg).SingleAsync(cancellation);
        if (kg > capacity) return new Finding("heelKg", "furnace.capacity", capacity);

        await db.LockFurnace(heat.FurnaceId, cancellation);
        // Before the heat, so that its own lines go on from the heel: to the microsecond, the finest that the records tell apart.
        var at = heat.StartedAt.AddMicroseconds(-1);
        await writing.Insert(Line(writing, heat.FurnaceId, at, kg - await db.InFurnace(heat.FurnaceId, at, cancellation), kg, reason), cancellation);
        var left = await db.InForce<Heel>().AsNoTracking().Include(h => h.Percents)
            .Where(h => h.FurnaceId == heat.FurnaceId && h.ObservedAt <= heat.StartedAt)
            .OrderByDescending(h => h.ObservedAt).ThenByDescending(h => h.Id).FirstOrDefaultAsync(cancellation);
        if (left is not null) await writing.Replace(left, kg, left.ObservedAt, reason, cancellation);
        heat.HeelKg = kg;
        return null;
    }

    private static FurnaceMetal Line(Writing writing, long furnaceId, DateTimeOffset at, double changeKg, double levelKg, string reason) => new()
    {
        EntryKey = writing.Stamp.EntryKey,
        PersonId = writing.Stamp.PersonId,
        ObservedAt = at,
        EnteredAt = writing.Stamp.EnteredAt,
        Reason = reason,
        FurnaceId = furnaceId,
        Kind = FurnaceMetalKind.Dipped,
        Kg = changeKg,
        LevelKg = levelKg,
    };
}
