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

    /// <summary>Why each material is in or out, in their order.</summary>
    public IReadOnlyList<MaterialOutcome> Materials { get; init; } = [];

    /// <summary>Where infeasible: what clashes.</summary>
    public IReadOnlyList<Conflict> Conflicts { get; init; } = [];
}
