using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Planning;

/// <summary>No plan is shown as meeting what it does not meet: the metal it makes is held against everything that was asked.</summary>
internal static class MeltCheck
{
    /// <exception cref="InvalidOperationException">The plan misses something by more than 1e-6: a fault of this room.</exception>
    public static void Require(MeltResult result)
    {
        // What is weighed in already is over a greatest mass by no fault of the plan.
        var missed = Misses.Of(result).FirstOrDefault(m => !Misses.Stands(m, result.Melt));
        if (missed is not null) throw new InvalidOperationException($"The plan that was found does not hold: {missed}.");
    }

    /// <summary>The solver's own sum has to be the money of the metal.</summary>
    /// <exception cref="InvalidOperationException">They differ by more than 1e-6 of the cost: a fault of this room.</exception>
    public static void RequireCost(MeltResult result, double solverCost, double costScale)
    {
        var cost = result.Costs.Weighed;
        var size = result.Sum(c => Math.Abs(c.CostPerKg) + c.BonusPerKg) + result.Costs.Nearness;
        if (Math.Abs(cost - solverCost) > 1e-6 * size + 1e-9 * costScale) throw new InvalidOperationException($"The plan costs {cost}, the solver says {solverCost}.");
    }
}
