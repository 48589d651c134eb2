using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Heats;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;

namespace MeltShop.Records.Tests;

/// <summary>Facts with the stamp of their entry.</summary>
public static class Facts
{
    public static MaterialAnalysis Analysis(this Stamp stamp, long materialId, params (Element Element, double Percent, double? Spread, double? Recovery)[] percents) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        MaterialId = materialId, Source = "invented for a test", SourceKind = "memory",
        Percents = [.. percents.Select(p => new MaterialPercent { Element = p.Element, Percent = p.Percent, Spread = p.Spread, RecoveryPercent = p.Recovery })],
    };

    public static FurnaceMetal Metal(this Stamp stamp, long furnaceId, FurnaceMetalKind kind, double kg, long? supersedes = null) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        FurnaceId = furnaceId, Kind = kind, Kg = kg, SupersedesId = supersedes, Reason = supersedes is null ? null : "misread",
    };

    public static Heel Heel(this Stamp stamp, long furnaceId, Heat? from, double kg, params (Element Element, double Percent)[] percents) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        FurnaceId = furnaceId, FromHeatId = from?.Id, Kg = kg,
        Percents = [.. percents.Select(p => new HeelPercent { Element = p.Element, Percent = p.Percent })],
    };
}
