using MeltShop.Records.Heats;

namespace MeltShop.Operations.Heats;

internal static class HeatStates
{
    /// <summary>The heat has its furnace to itself.</summary>
    public static bool IsInFurnace(this Heat heat) => heat.State is HeatState.Charging or HeatState.Bath or HeatState.Tapping;
}
