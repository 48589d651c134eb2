using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Heats;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Heats;

internal static class HeelFacts
{
    /// <summary>What a heat leaves in its furnace; an element that is not among the percents was not measured.</summary>
    public static Heel Heel(this Stamp stamp, Heat heat, double kg, Analysis analysis, long? sampleId, string? reason = null) => new()
    {
        EntryKey = stamp.EntryKey,
        PersonId = stamp.PersonId,
        ObservedAt = stamp.ObservedAt,
        EnteredAt = stamp.EnteredAt,
        Reason = reason,
        FurnaceId = heat.FurnaceId,
        FromHeatId = heat.Id,
        Kg = kg,
        SampleId = sampleId,
        Percents = [.. analysis.Select(p => new HeelPercent { Element = p.Key, Percent = p.Value })],
    };
}
