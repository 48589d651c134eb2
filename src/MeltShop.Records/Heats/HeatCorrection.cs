using MeltShop.Records.Keeping;

namespace MeltShop.Records.Heats;

/// <summary>
/// That a heat was said to be of another grade, to have been in another furnace, to have started or ended at another time or to have begun over
/// another heel than it did: what stands now beside what stood before, who put it right and why. The fields of <see cref="Heat"/> are its projections.
/// </summary>
public sealed class HeatCorrection : Fact
{
    public required long HeatId { get; init; }
    public required long GradeId { get; init; }
    public required long FormerGradeId { get; init; }
    public required DateTimeOffset StartedAt { get; init; }
    public required DateTimeOffset FormerStartedAt { get; init; }

    /// <summary>Liquid in the furnace when the heat started, kg; null in what was recorded before heels were put right this way.</summary>
    public double? HeelKg { get; init; }

    /// <summary>What was said before; null likewise.</summary>
    public double? FormerHeelKg { get; init; }

    /// <summary>Null in what was recorded before furnaces were put right.</summary>
    public long? FurnaceId { get; init; }

    /// <summary>What was said before; null likewise.</summary>
    public long? FormerFurnaceId { get; init; }

    /// <summary>Null while the heat goes on, and in what was recorded before ends were put right.</summary>
    public DateTimeOffset? ClosedAt { get; init; }

    /// <summary>What was said before; null likewise.</summary>
    public DateTimeOffset? FormerClosedAt { get; init; }
}
