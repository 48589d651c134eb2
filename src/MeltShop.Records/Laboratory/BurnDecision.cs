using MeltShop.Records.Keeping;

namespace MeltShop.Records.Laboratory;

/// <summary>That somebody set a burn aside, or took it back: who, when and why. <see cref="Burn.SetAside"/> is its projection.</summary>
public sealed class BurnDecision : Fact
{
    public required long SampleId { get; init; }

    /// <summary>The burn, from 1 within the sample.</summary>
    public required int Ordinal { get; init; }

    /// <summary>True where the burn no longer counts.</summary>
    public required bool SetAside { get; init; }
}
