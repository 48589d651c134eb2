using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Keeping;

namespace MeltShop.Records.Heats;

/// <summary>What a closed heat left in the furnace: the next heat's heel, with its analysis.</summary>
public sealed class Heel : Fact
{
    public required long FurnaceId { get; init; }

    /// <summary>The heat that left it; null for a heel entered by hand.</summary>
    public long? FromHeatId { get; init; }

    public required double Kg { get; init; }

    /// <summary>The sample that gave the analysis; null where it was entered by hand.</summary>
    public long? SampleId { get; init; }

    public List<HeelPercent> Percents { get; init; } = [];
}

public sealed class HeelPercent
{
    public long Id { get; init; }
    public long HeelId { get; init; }
    public required Element Element { get; init; }
    public required double Percent { get; init; }
}
