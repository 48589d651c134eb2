using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;

namespace MeltShop.Charging.WeighingIn;

/// <summary>What a heel costs: the same heat with the heel and with the furnace drained first.</summary>
public static class HeelDraining
{
    /// <summary>Compares the two. Drained, the furnace is filled with new metal in the heel's place, which is bought and melted.</summary>
    /// <param name="problem">The heat with its heel; nothing may be weighed in yet.</param>
    /// <param name="worthPerTonne">What 1000 kg of the drained iron are worth as returns, less the work of pigging and remelting them.</param>
    /// <param name="cancellation">Ends the call.</param>
    /// <inheritdoc cref="ChargeOptimiser.Plan" path="/exception"/>
    public static HeelComparison Compare(ChargeProblem problem, double worthPerTonne, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        if (!double.IsFinite(worthPerTonne)) throw new ArgumentException("The worth of the drained iron has to be a finite number.", nameof(worthPerTonne));
        if (problem.WeighedKg.Count > 0) throw new ArgumentException("A heel cannot be drained once something is weighed in.", nameof(problem));
        return new(
            ChargeOptimiser.Plan(problem, cancellation),
            ChargeOptimiser.Plan(problem with { Heel = Metal.None }, cancellation),
            problem.Heel.Kg,
            worthPerTonne * problem.Heel.Kg / 1000);
    }
}

/// <summary>A heat with its heel and without.</summary>
/// <param name="WithHeel">The plan that keeps the heel.</param>
/// <param name="Drained">The plan of the drained furnace, for as much liquid.</param>
/// <param name="DrainedKg">The heel, kg: new metal takes its place.</param>
/// <param name="WorthOfDrained">What the drained iron is worth.</param>
public sealed record HeelComparison(ChargePlan WithHeel, ChargePlan Drained, double DrainedKg, double WorthOfDrained)
{
    /// <summary>
    /// What draining saves on the heat, the metal that replaces the heel paid for and the worth of the drained iron counted; below zero it costs. Null
    /// where one of the plans does not exist: then <see cref="MakesItPossible"/> says the rest.
    /// </summary>
    public double? Saving => Exists(WithHeel) && Exists(Drained) ? WithHeel.TotalCost - (Drained.TotalCost - WorthOfDrained) : null;

    /// <summary>True where the grade cannot be met with the heel and can without.</summary>
    public bool MakesItPossible => WithHeel.Status == PlanStatus.Infeasible && Exists(Drained);

    private static bool Exists(ChargePlan plan) => plan.LiquidKg > 0;
}
