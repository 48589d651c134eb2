using MeltShop.Records.Keeping;

namespace MeltShop.Records.Heats;

/// <summary>That a heat came into a state: who, when and why. <see cref="Heat.State"/> is its projection.</summary>
public sealed class HeatStep : Fact
{
    public required long HeatId { get; init; }
    public required HeatState State { get; init; }
}
