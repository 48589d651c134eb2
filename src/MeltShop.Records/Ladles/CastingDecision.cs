using MeltShop.Records.Keeping;

namespace MeltShop.Records.Ladles;

public enum CastingVerdict
{
    Hold,
    Release,
    Scrap,
}

/// <summary>What somebody entitled to it decided about the castings of a treated ladle, and what they had seen.</summary>
public sealed class CastingDecision : Fact
{
    public required long TreatedLadleId { get; init; }
    public required CastingVerdict Verdict { get; init; }

    /// <summary>The last-metal sample that was seen; a release needs one.</summary>
    public long? SampleId { get; init; }

    /// <summary>True for the hold that follows when something that a release rested on was corrected.</summary>
    public bool FollowsCorrection { get; init; }
}
