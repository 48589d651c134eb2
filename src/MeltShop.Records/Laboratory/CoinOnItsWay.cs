using MeltShop.Records.Keeping;

namespace MeltShop.Records.Laboratory;

/// <summary>
/// A coin that was taken and of which no result has come yet. Observed-at is when it was taken. The sample that brings its result
/// names it; one that got lost is superseded by a row that says so, with a reason.
/// </summary>
public sealed class CoinOnItsWay : Fact
{
    public required long HeatId { get; init; }
    public long? TreatedLadleId { get; init; }
    public required SampleKind Kind { get; init; }
    public required string CoinNumber { get; init; }
    public string? Remarks { get; init; }

    /// <summary>It fell apart or was not found: no result will come.</summary>
    public bool IsLost { get; init; }
}
