using MeltShop.Operations.Heats;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;

namespace MeltShop.Operations.Laboratory;

/// <summary>What a sample says of the heat and the ladle that it was taken from, however it came.</summary>
internal static class SampleStates
{
    /// <summary>The first bath sample turns a charging heat into a bath; one of the last metal says that the ladle is poured, and holds it.</summary>
    public static void Came(this Writing writing, SampleKind kind, Heat heat, TreatedLadle? ladle)
    {
        if (kind == SampleKind.Bath && heat.State == HeatState.Charging) writing.Step(heat, HeatState.Bath);
        if (kind == SampleKind.LastMetal && ladle is { State: TreatedLadleState.Pouring }) writing.Step(ladle, TreatedLadleState.Held);
    }
}
