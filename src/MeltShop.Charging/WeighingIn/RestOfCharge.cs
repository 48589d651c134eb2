using MeltShop.Charging.Plans;

namespace MeltShop.Charging.WeighingIn;

/// <summary>What is still to go in, and what can still be reached.</summary>
public sealed record RestOfCharge
{
    /// <summary>The cheapest plan of the whole charge, what is in included; or what clashes.</summary>
    public required ChargePlan Plan { get; init; }

    /// <summary>Whether the limits can still be kept.</summary>
    public required bool IsReachable { get; init; }

    /// <summary>
    /// The whole charge: that of the plan, or where the limits cannot be kept any more the one that does the least harm. It names what it
    /// misses, a greatest mass that was weighed over included. Null where none was found: see <see cref="End"/>.
    /// </summary>
    public required ChargeEvaluation? Charge { get; init; }

    /// <summary>How the search for it ended; where there is no charge, why.</summary>
    public SearchEnd End { get; init; }

    /// <summary>What is still to be weighed in, in the order of the materials.</summary>
    public required IReadOnlyList<LineToGo> ToGo { get; init; }

    /// <summary>How far each limit's quantity can still be moved by what is left, the other limits aside; in the order of the limits.</summary>
    public required IReadOnlyList<ReachableRange> StillPossible { get; init; }
}

/// <summary>A material of which something is still to go in.</summary>
/// <param name="Code">The material.</param>
/// <param name="Kg">Its mass in the whole charge, kg.</param>
/// <param name="WeighedKg">What of it is in, kg.</param>
/// <param name="ToGoKg">What is to go in, kg, above 0.</param>
public sealed record LineToGo(string Code, double Kg, double WeighedKg, double ToGoKg);

/// <summary>Values that a quantity can have; the scatter margin of a confidence above 50 % is taken off.</summary>
/// <param name="Quantity">The quantity.</param>
/// <param name="Least">Least value; null where it cannot be said.</param>
/// <param name="Most">Greatest value; null where it cannot be said.</param>
public sealed record ReachableRange(string Quantity, double? Least, double? Most);
