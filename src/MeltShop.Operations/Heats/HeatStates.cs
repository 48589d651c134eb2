using MeltShop.Records;
using MeltShop.Records.Heats;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

internal static class HeatStates
{
    /// <summary>
    /// Keeps the ledger of a heat's furnace to this transaction and reads the heat then: nothing slips in behind its end. Null where there is none.
    /// </summary>
    public static async Task<Heat?> LockedHeat(this RecordsContext db, long heatId, CancellationToken cancellation)
    {
        var furnaces = await db.Heats.Where(h => h.Id == heatId).Select(h => h.FurnaceId).ToListAsync(cancellation);
        foreach (var id in furnaces) await db.LockFurnace(id, cancellation);
        return await db.Heats.FindAsync([heatId], cancellation);
    }

    /// <summary>The heat has its furnace to itself.</summary>
    public static bool IsInFurnace(this Heat heat) => heat.State is HeatState.Charging or HeatState.Bath or HeatState.Tapping;

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
