using MeltShop.Metallurgy.Elements;
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

/// <summary>A line of the liquid-metal ledger of a furnace; what is in it is the sum of its lines that no later one corrects.</summary>
public sealed class FurnaceMetal : Fact
{
    public required long FurnaceId { get; init; }
    public long? HeatId { get; init; }
    public required FurnaceMetalKind Kind { get; init; }

    /// <summary>Change of the liquid mass, kg; negative when metal leaves.</summary>
    public required double Kg { get; init; }

    /// <summary>For a dip: the liquid that it showed, kg. What was recorded before dips kept it has none.</summary>
    public double? LevelKg { get; init; }

    /// <summary>For a dip: how far it may be off either way, kg; null where nobody said.</summary>
    public double? PlusMinusKg { get; init; }

    /// <summary>For what was poured back: the ladle that it came from; null for other iron.</summary>
    public long? TreatedLadleId { get; init; }

    /// <summary>For what was poured back: its analysis. An element that is absent is not known.</summary>
    public List<FurnaceMetalPercent> Percents { get; init; } = [];
}

public sealed class FurnaceMetalPercent
{
    public long Id { get; init; }
    public long FurnaceMetalId { get; init; }
    public required Element Element { get; init; }
    public required double Percent { get; init; }
}
