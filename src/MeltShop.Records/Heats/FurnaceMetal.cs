using MeltShop.Records.Keeping;

namespace MeltShop.Records.Heats;

public enum FurnaceMetalKind
{
    Charged,
    Tapped,
    Pigged,
    PouredBack,

    /// <summary>A dipped level or a load cell sets the ledger right.</summary>
    Dipped,
}

/// <summary>A line of the liquid-metal ledger of a furnace; what is in it is the sum of its lines.</summary>
public sealed class FurnaceMetal : Fact
{
    public required long FurnaceId { get; init; }
    public long? HeatId { get; init; }
    public required FurnaceMetalKind Kind { get; init; }

    /// <summary>Change of the liquid mass, kg; negative when metal leaves.</summary>
    public required double Kg { get; init; }
}
