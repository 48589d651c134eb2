using MeltShop.Records.Keeping;

namespace MeltShop.Records.Ladles;

/// <summary>A mould that was poured from a ladle; <see cref="Fact.ObservedAt"/> is its last moment.</summary>
public sealed class PouredMould : Fact, IWithdrawable
{
    public required long TreatedLadleId { get; init; }

    /// <summary>What is written on the mould; once in a ladle.</summary>
    public required string Label { get; init; }

    /// <summary>When its pour began.</summary>
    public required DateTimeOffset FirstAt { get; init; }

    public required double Kg { get; init; }

    /// <summary>The limit after which it was poured; null where it was in time. Its castings are held.</summary>
    public PouringLimitKind? LateFor { get; init; }

    /// <summary>When that limit was.</summary>
    public DateTimeOffset? StopAt { get; init; }

    public bool IsWithdrawn { get; init; }
}
