using MeltShop.Records.Keeping;

namespace MeltShop.Records.Yard;

/// <summary>Where a lot lies in the yard from some time on; the latest one counts. All of a lot lies in one bin.</summary>
public sealed class LotPlace : Fact
{
    public required long MaterialId { get; init; }

    /// <summary>The lot as it stands on the bag; null for what lies there outside of every lot.</summary>
    public string? Lot { get; init; }

    /// <summary>The bin as the shop calls it; null where it lies in none any more.</summary>
    public string? Bin { get; init; }
}
