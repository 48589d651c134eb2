using MeltShop.Records.Keeping;

namespace MeltShop.Records.Ladles;

/// <summary>That a treated ladle came into a state: who, when and why. <see cref="TreatedLadle.State"/> is its projection.</summary>
public sealed class LadleStep : Fact
{
    public required long TreatedLadleId { get; init; }
    public required TreatedLadleState State { get; init; }
}
