using MeltShop.Metallurgy.Elements;

namespace MeltShop.Charging.Plans;

/// <summary>The answer to a <see cref="Problems.ChargeProblem"/>. Figures of an infeasible plan are zero and its lists empty, but for the conflicts and what was assumed.</summary>
public sealed record ChargePlan
{
    /// <summary>How it ended.</summary>
    public required PlanStatus Status { get; init; }

    /// <summary>Cost of all that is weighed in, with its slag and melting where the problem prices them.</summary>
    public double TotalCost { get; init; }

    /// <summary>What the cost is made of, and the wishes that steered the plan.</summary>
    public CostParts Costs { get; init; } = new(0, 0, 0, 0, 0);

    /// <summary>Cost per 1000 kg of new liquid metal (without the heel).</summary>
    public double CostPerTonne { get; init; }

    /// <summary>Liquid mass, heel included, kg.</summary>
    public double LiquidKg { get; init; }

    /// <summary>What is charged, in the order of the materials; nothing with zero mass.</summary>
    public IReadOnlyList<PlanLine> Lines { get; init; } = [];

    /// <summary>Expected analysis of the melt.</summary>
    public Analysis Analysis { get; init; } = Analysis.Empty;

    /// <summary>Elements that a limit asks for and the heel did not have measured.</summary>
    public IReadOnlyList<Element> AssumedZero { get; init; } = [];

    /// <summary>Where the plan sits on each limit, in their order.</summary>
    public IReadOnlyList<LimitOutcome> Limits { get; init; } = [];

    /// <summary>
    /// What the plan sits on beside its limits (stock, masses and shares of materials and groups, rooms, the liquid mass), and what that costs; empty with whole
    /// pieces, where no derivative exists, and where the plan was not explained.
    /// </summary>
    public IReadOnlyList<BoundOutcome> Bounds { get; init; } = [];

    /// <summary>Why each material is in or out, in their order.</summary>
    public IReadOnlyList<MaterialOutcome> Materials { get; init; } = [];

    /// <summary>Where infeasible: what clashes.</summary>
    public IReadOnlyList<Conflict> Conflicts { get; init; } = [];

    /// <summary>Where infeasible: it could not be decided of each of the conflicts whether it can be spared; fewer of them may clash already.</summary>
    public bool MayConflictsBeFewer { get; init; }

    /// <summary>How the search ended; where the plan is not proven, why.</summary>
    public SearchEnd End { get; init; }

    /// <summary>
    /// Where there is no cheapest charge: codes of materials with a price below zero of which any mass could be charged, since they bring no metal, or the furnace has
    /// no end. A stock, a greatest mass or a greatest share makes an end of it.
    /// </summary>
    public IReadOnlyList<string> Endless { get; init; } = [];

    /// <summary>
    /// Where the plan is not proven: a plan might cost less by so many percent of its cost, and not by more (of all that is minimised, where there are
    /// wishes); null where it is proven, and where there is no plan or nothing is known.
    /// </summary>
    public double? GapPercent { get; init; }

    /// <summary>
    /// Where no plan with whole pieces was found, and none was shown not to exist: the cheapest charge as if pieces could be cut, which misses nothing but whole
    /// pieces. No plan costs less; it is for a person to make whole and check. Null otherwise.
    /// </summary>
    public ChargeEvaluation? Continuous { get; init; }
}
