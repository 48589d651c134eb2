using MeltShop.Records.Heats;

namespace MeltShop.Operations.Heats;

internal static class HeatStates
{
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
