using MeltShop.Records.Keeping;

namespace MeltShop.Records.Ladles;

public enum CastingVerdict
{
    Hold,
    Release,
    Scrap,

    /// <summary>Released as another grade, whose properties the tests show and whose marking and sale the customer has consented to.</summary>
    Downgrade,
}

/// <summary>What somebody entitled to it decided about the castings of a treated ladle, and what they had seen.</summary>
public sealed class CastingDecision : Fact
{
    public required long TreatedLadleId { get; init; }
    public required CastingVerdict Verdict { get; init; }

    /// <summary>The test unit that was decided about apart from its ladle; null for all castings that were not.</summary>
    public string? TestUnit { get; init; }

    /// <summary>The last-metal sample that was seen; a release needs one.</summary>
    public long? SampleId { get; init; }

    /// <summary>What was seen when it was made, as JSON; null for what was decided before it was kept.</summary>
    public string? Seen { get; init; }

    /// <summary>True where the person gave the password again for it.</summary>
    public bool WasSigned { get; init; }

    /// <summary>For a downgrade: the grade that the castings are now.</summary>
    public long? GradeId { get; init; }

    /// <summary>For a downgrade: how the castings were marked anew.</summary>
    public string? ReMarking { get; init; }

    /// <summary>For a downgrade: who consented for the customer, when, and in which paper.</summary>
    public string? Consent { get; init; }

    /// <summary>True for the hold that follows when something that a release rested on was corrected.</summary>
    public bool FollowsCorrection { get; init; }
}
