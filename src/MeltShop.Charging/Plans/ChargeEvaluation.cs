using MeltShop.Metallurgy.Elements;

namespace MeltShop.Charging.Plans;

/// <summary>What comes of a given charge, and what of the question it misses. The charge is not changed.</summary>
public sealed record ChargeEvaluation
{
    /// <summary>True where it keeps everything that was asked.</summary>
    public bool Holds => Misses.Count == 0;

    /// <summary>What it misses, by more than one part in a million.</summary>
    public required IReadOnlyList<Miss> Misses { get; init; }

    /// <summary>What its cost is made of.</summary>
    public required CostParts Costs { get; init; }

    /// <summary>Cost per 1000 kg of new liquid metal (without the heel).</summary>
    public required double CostPerTonne { get; init; }

    /// <summary>Liquid mass, heel included, kg.</summary>
    public required double LiquidKg { get; init; }

    /// <summary>What is charged, in the order of the materials; nothing with zero mass.</summary>
    public required IReadOnlyList<PlanLine> Lines { get; init; }

    /// <summary>Expected analysis of the melt.</summary>
    public required Analysis Analysis { get; init; }

    /// <summary>Elements that a limit asks for and the heel did not have measured.</summary>
    public required IReadOnlyList<Element> AssumedZero { get; init; }

    /// <summary>Where it sits on each limit, in their order; without marginal costs.</summary>
    public required IReadOnlyList<LimitOutcome> Limits { get; init; }

    /// <summary>Mass and share of each group, in their order.</summary>
    public required IReadOnlyList<GroupOutcome> Groups { get; init; }

    /// <summary>Volume of the cold charge against each room, in their order.</summary>
    public required IReadOnlyList<VolumeOutcome> Volumes { get; init; }
}

/// <summary>Several materials together.</summary>
/// <param name="Name">The group.</param>
/// <param name="Kg">Weighed mass, kg.</param>
/// <param name="Percent">Share of the total weighed mass, %.</param>
public sealed record GroupOutcome(string Name, double Kg, double Percent);

/// <summary>The cold charge against a room.</summary>
/// <param name="Name">The room.</param>
/// <param name="M3">Volume of what has a bulk density, m³.</param>
/// <param name="MostM3">The room, m³.</param>
/// <param name="NotCounted">Materials of the charge whose bulk density is not known.</param>
public sealed record VolumeOutcome(string Name, double M3, double MostM3, IReadOnlyList<string> NotCounted);
