namespace MeltShop.Records.Reading.Recall;

/// <summary>Where suspect iron begins: a heat from an instant on, or a treated ladle.</summary>
/// <param name="HeatId">The heat; null for a ladle.</param>
/// <param name="TreatedLadleId">The ladle; null for a heat.</param>
/// <param name="From">What was tapped of the heat before this is not concerned; null for all of it.</param>
/// <param name="IsSure">False where it only may be so.</param>
public sealed record RecallStart(long? HeatId, long? TreatedLadleId, DateTimeOffset? From = null, bool IsSure = true)
{
    public static RecallStart Heat(long id, DateTimeOffset? from = null, bool isSure = true) => new(id, null, from, isSure);

    public static RecallStart Ladle(long id, bool isSure = true) => new(null, id, null, isSure);
}
