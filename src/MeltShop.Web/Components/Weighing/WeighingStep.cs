using MeltShop.Records.Reading.Yard;

namespace MeltShop.Web.Components.Weighing;

/// <summary>Where a step of a weighing card stands.</summary>
public enum WeighingStanding
{
    Later,

    /// <summary>The next one to weigh.</summary>
    Next,

    /// <summary>Near enough to its target.</summary>
    Done,

    /// <summary>More is in than was wanted.</summary>
    Over,

    /// <summary>The charge is in: less than was wanted, and nothing of it is still to come.</summary>
    Short,
}

/// <summary>One material to weigh, in the order of loading. Masses in kg weighed.</summary>
/// <param name="Code">Names it for whoever looks for its row.</param>
/// <param name="TargetKg">What it should become; 0 where it is not wanted.</param>
/// <param name="ActualKg">What was weighed; null where nothing was.</param>
public sealed record WeighingStep(string Code, string Name, double TargetKg, double? ActualKg, WeighingStanding Standing)
{
    /// <summary>From which lots what is left is taken, the oldest first; empty where the yard has none.</summary>
    public IReadOnlyList<LotShare> Lots { get; init; } = [];

    /// <summary>What the first plan wanted; null where that is the target still.</summary>
    public double? PlannedKg { get; init; }

    /// <summary>How much more is in than the first plan wanted; negative where it is less.</summary>
    public double OverKg => (ActualKg ?? 0) - (PlannedKg ?? TargetKg);

    /// <summary>Still to be weighed; negative where there is too much.</summary>
    public double LeftKg => TargetKg - (ActualKg ?? 0);
}
