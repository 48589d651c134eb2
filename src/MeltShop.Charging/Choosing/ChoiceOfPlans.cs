using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Choosing;

/// <summary>What distinguishes a plan from the others.</summary>
public enum PlanKind
{
    /// <summary>No plan costs less.</summary>
    Cheapest,

    /// <summary>No plan within the price has fewer materials; of those the cheapest.</summary>
    FewestMaterials,

    /// <summary>No plan within the price uses more returns; of those the cheapest.</summary>
    MostReturns,

    /// <summary>
    /// No plan within the price keeps farther from its limits (see <see cref="PlanSafety"/>), of those the cheapest: farther by more than 0.0001 standard deviations, or 0.01 % of
    /// half a window where nothing scatters; with whole pieces by more than 0.004 or 0.1 %. More than four deviations, or more than the middle, is not sought.
    /// All this but for traces that are left out.
    /// </summary>
    Safest,

    /// <summary>No plan is nearer to the last charge in the shares of its materials; of those the cheapest.</summary>
    AsLastTime,
}

/// <summary>Several plans for one question. Where it cannot be met there is none, and the cheapest says what clashes.</summary>
public sealed record ChoiceOfPlans
{
    /// <summary>The cheapest plan with all its reasons.</summary>
    public required ChargePlan Cheapest { get; init; }

    /// <summary>All plans, the cheapest first, in the order of <see cref="PlanKind"/>; the same charge may be among them more than once.</summary>
    public required IReadOnlyList<PlanToChoose> Plans { get; init; }

    /// <summary>What was charged last time and cannot be charged now.</summary>
    public required IReadOnlyList<string> Gone { get; init; }
}

/// <summary>A plan to choose.</summary>
public sealed record PlanToChoose
{
    /// <summary>What distinguishes it.</summary>
    public required PlanKind Kind { get; init; }

    /// <summary>Whether it is proven to be what its kind says; <see cref="PlanStatus.TimeLimit"/> where time ran out first.</summary>
    public required PlanStatus Status { get; init; }

    /// <summary>The charge, which keeps all that was asked; null where none was found in time.</summary>
    public ChargeEvaluation? Charge { get; init; }

    /// <summary>Why its search failed, for the log: a fault of this room, which leaves the other plans as they are; null where it did not.</summary>
    public string? Fault { get; init; }

    /// <summary>What it costs more than the cheapest plan; null where there is no charge.</summary>
    public double? ExtraCost { get; init; }

    /// <summary>How far it keeps from its limits; null where there is no charge.</summary>
    public PlanSafety? Safety { get; init; }

    /// <summary>How often all limits would be kept at once; null where no analysis scatters or there is no charge.</summary>
    public JointProbability? Joint { get; init; }
}
