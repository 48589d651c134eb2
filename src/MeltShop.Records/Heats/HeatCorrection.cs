using MeltShop.Records.Keeping;

namespace MeltShop.Records.Heats;

/// <summary>
/// That a heat was said to be of another grade, or to have started at another time, than it is: what stands now beside what stood before,
/// who put it right and why. <see cref="Heat.GradeId"/> and <see cref="Heat.StartedAt"/> are its projections.
/// </summary>
public sealed class HeatCorrection : Fact
{
    public required long HeatId { get; init; }
    public required long GradeId { get; init; }
    public required long FormerGradeId { get; init; }
    public required DateTimeOffset StartedAt { get; init; }
    public required DateTimeOffset FormerStartedAt { get; init; }
}
