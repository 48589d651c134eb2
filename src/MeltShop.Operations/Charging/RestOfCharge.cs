using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

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

    /// <summary>No charge at all could be found.</summary>
    None,
}

/// <summary>The whole charge as it should become, what is weighed in already included.</summary>
/// <param name="Plan">Masses by code, kg weighed.</param>
/// <param name="Misses">Limits that the melt will miss, against what was asked.</param>
public sealed record RestOfCharge(RestStanding Standing, ChargeProblem Problem, ChargePlan Plan, IReadOnlyList<MissedLimit> Misses)
{
    /// <summary>Liquid over what was asked, kg; 0 where it is not.</summary>
    public double TooMuchKg(ChargeProblem asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        return Math.Max(0, Plan.LiquidKg - RestQuestion.MostKg(asked));
    }
}

/// <summary>A limit that will be missed, in the quantity's unit.</summary>
/// <param name="IsMost">Whether it is the greatest value that will be passed.</param>
/// <param name="Limit">What was asked, without margins.</param>
/// <param name="Value">What it will be.</param>
public sealed record MissedLimit(string Quantity, bool IsMost, double Limit, double Value);
