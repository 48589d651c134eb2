using MeltShop.Charging.Plans;
using MeltShop.Charging.WeighingIn;

namespace MeltShop.Operations.Charging;

/// <summary>How much of what was asked can still be had once some of the charge is in the furnace.</summary>
public enum RestStanding
{
    /// <summary>All of it.</summary>
    Kept,

    /// <summary>The limits, but not their margins or the confidence that was asked for.</summary>
    WithoutMargin,

    /// <summary>Not the limits, or not the mass: the rest is what does the least harm.</summary>
    Missed,

    /// <summary>No charge was found in the time that there is.</summary>
    None,

    /// <summary>Something is in whose analysis nobody knows, so that nobody can say what the furnace holds.</summary>
    NoAnalysis,
}

/// <summary>The rest of a charge as it was planned anew.</summary>
/// <param name="Rest">The answer of the optimiser; null where it could not be asked.</param>
/// <param name="Unknown">Names of what is in the furnace without an analysis.</param>
public sealed record RestAnswer(RestStanding Standing, RestOfCharge? Rest, IReadOnlyList<string> Unknown)
{
    /// <summary>The whole charge as it should become, what is in already included; null where nobody can say.</summary>
    public IReadOnlyList<PlanLine>? Lines => Rest?.Charge?.Lines;

    /// <summary>Liquid that it makes, kg; null where nobody can say.</summary>
    public double? LiquidKg => Rest?.Charge?.LiquidKg;

    /// <summary>What the melt will miss, as it was asked without margins.</summary>
    public IReadOnlyList<Miss> Misses => Standing is RestStanding.Missed ? Rest?.Charge?.Misses ?? [] : [];

    /// <summary>How far what is still to come can move each limited quantity.</summary>
    public IReadOnlyList<ReachableRange> StillPossible => Rest?.StillPossible ?? [];
}
