using MeltShop.Operations.Correcting;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

internal static class HeatStates
{
    /// <summary>
    /// Keeps the ledger of a heat's furnace to this transaction and reads the heat then: nothing slips in behind its end. Null where there is none.
    /// </summary>
    public static async Task<Heat?> LockedHeat(this RecordsContext db, long heatId, CancellationToken cancellation)
    {
        await db.LockHeats(cancellation, heatId);
        return await db.Heats.FindAsync([heatId], cancellation);
    }

    /// <summary>
    /// Keeps the ledgers of the furnaces that heats are in to this transaction. A heat that was put into another furnace while this waited is followed there.
    /// </summary>
    public static async Task LockHeats(this RecordsContext db, CancellationToken cancellation, params IEnumerable<long> heatIds)
    {
        var (heats, locked) = (heatIds.Distinct().ToList(), new List<long>());
        while (true)
        {
            var furnaces = await db.Heats.Where(h => EF.Parameter(heats).Contains(h.Id)).Select(h => h.FurnaceId).Distinct().ToListAsync(cancellation);
            if (furnaces.TrueForAll(locked.Contains)) return;
            await db.LockFurnaces(cancellation, furnaces);
            locked.AddRange(furnaces);
        }
    }

    /// <summary>The heat has its furnace to itself.</summary>
    public static bool IsInFurnace(this Heat heat) => heat.State is HeatState.Charging or HeatState.Bath or HeatState.Tapping;

    /// <summary>The heats that have or had a furnace to themselves: not those that were called off before any metal moved.</summary>
    public static IQueryable<Heat> HeatsInAFurnace(this RecordsContext db) =>
        db.Heats.Where(h => h.State != HeatState.Cancelled || db.InForce<FurnaceMetal>().Any(m => m.HeatId == h.Id));

    /// <summary>Brings a heat into a state and keeps who did it, when and why; does nothing where it is in it already.</summary>
    public static void Step(this Writing writing, Heat heat, HeatState state, string? reason = null)
    {
        if (heat.State == state) return;
        heat.State = state;
        writing.Came(heat, state, reason);
    }

    /// <summary>Keeps that a heat came into the state that it has.</summary>
    public static void Came(this Writing writing, Heat heat, HeatState state, string? reason = null) => writing.Db.Add(new HeatStep
    {
        EntryKey = writing.Stamp.EntryKey,
        PersonId = writing.Stamp.PersonId,
        ObservedAt = writing.Stamp.ObservedAt,
        EnteredAt = writing.Stamp.EnteredAt,
        Reason = reason,
        HeatId = heat.Id,
        State = state,
    });
}
