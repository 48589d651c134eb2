using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Charging;

/// <summary>Finds the cheapest charge that meets the limits. May be called from any thread.</summary>
public static class ChargeOptimiser
{
    /// <summary>Plans a charge.</summary>
    /// <param name="problem">A well-formed problem; what is well formed but impossible comes back as infeasible, with what clashes.</param>
    /// <param name="cancellation">Ends the call; a linear solve stops within some tens of milliseconds.</param>
    /// <exception cref="OperationCanceledException">The caller wished to stop.</exception>
    /// <exception cref="InvalidOperationException">The solver failed, or the metal that the plan makes is not the metal that was asked for: a fault of this room.</exception>
    public static ChargePlan Plan(ChargeProblem problem, CancellationToken cancellation = default)
    {
        var melt = MeltOf(problem);
        return PerTonne(MeltPlanner.Plan(melt, cancellation).Plan, problem);
    }

    /// <summary>The same plan, with what all costs that it sits on: <see cref="ChargePlan.Bounds"/>, and <see cref="LimitOutcome.LoweredCost"/>. Where the plan is degenerate that takes two more small programs for each of them.</summary>
    /// <inheritdoc cref="Plan"/>
    public static ChargePlan Explained(ChargeProblem problem, CancellationToken cancellation = default)
    {
        var melt = MeltOf(problem);
        return PerTonne(MeltPlanner.InTurn(melt, (formulation, budget) => MeltPlanner.Solve(formulation, budget, isExplained: true), cancellation).Plan, problem);
    }

    /// <summary>Loads the native solver and starts a worker for whole pieces, so that nobody waits for them: to be called once when the app starts.</summary>
    public static void WarmUp()
    {
        var iron = new ChargeMaterial { Code = "iron", PricePerTonne = 1, Composition = new MaterialComposition { Analysis = Analysis.Empty } };
        Plan(new() { MeltKg = 1, Materials = [iron], Limits = [] });
        Plan(new() { MeltKg = 1, Materials = [iron with { PieceKg = 1 }], Limits = [] });
    }

    internal static ChargePlan PerTonne(ChargePlan plan, ChargeProblem problem)
    {
        var fresh = plan.LiquidKg - problem.Heel.Kg;
        return plan with { CostPerTonne = fresh > 0 ? 1000 * plan.TotalCost / fresh : 0 };
    }

    internal static Melt MeltOf(ChargeProblem problem)
    {
        ProblemCheck.Require(problem);
        return new()
        {
            Start = problem.Heel,
            Columns = [.. problem.Materials.Select(m => MeltColumn.Of(m, problem.SlagCostPerTonne, problem.EnergyPricePerKWh, problem.WeighedKg.GetValueOrDefault(m.Code)))],
            Limits = problem.Limits,
            Groups = problem.Groups,
            Volumes = problem.Volumes,
            LeastLiquidKg = problem.MeltKg,
            MostLiquidKg = problem.MeltKg + problem.MeltToleranceKg,
            WantedKg = problem.MeltKg,
            CapacityKg = problem.CapacityKg ?? double.PositiveInfinity,
            ScaleKg = Melt.Scale(problem.MeltKg), // without the tolerance: beside a huge one the melt itself would be nothing
            Deviations = problem.ConfidencePercent > 50 ? Normal.Quantile(problem.ConfidencePercent / 100) : 0,
        };
    }
}
