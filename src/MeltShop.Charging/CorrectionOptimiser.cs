using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Heat;

namespace MeltShop.Charging;

/// <summary>Finds the cheapest addition that brings a bath into its limits, all elements at once. May be called from any thread.</summary>
public static class CorrectionOptimiser
{
    /// <summary>Plans a correction; where the bath is inside already, the plan is empty and costs nothing.</summary>
    /// <inheritdoc cref="ChargeOptimiser.Plan" path="/exception"/>
    public static CorrectionPlan Plan(CorrectionProblem problem, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var additions = problem.Additions.Select(MeltColumn.Of);
        var melt = new Melt
        {
            Start = problem.Bath,
            Columns = problem.MaxTapOffKg > 0
                ? [.. additions, MeltColumn.TapOff(problem.Bath, problem.MaxTapOffKg, problem.TapOffCostPerTonne ?? throw NoCost(problem))]
                : [.. additions],
            Limits = problem.Limits,
            MostLiquidKg = problem.CapacityKg ?? double.PositiveInfinity,
            MostWeighedKg = problem.MaxAdditionKg ?? double.PositiveInfinity,
            WantedKg = problem.CapacityKg,
            ScaleKg = Melt.Scale(problem.Bath.Kg),
        };
        var (plan, kilograms) = MeltPlanner.Plan(melt, cancellation);
        if (kilograms.Length == 0) return new() { Plan = plan };
        var tapOff = kilograms.Skip(problem.Additions.Count).FirstOrDefault();
        var after = plan.LiquidKg;
        return Chill(problem, kilograms, tapOff) with
        {
            Plan = plan with { CostPerTonne = after > 0 ? 1000 * plan.TotalCost / after : 0 },
            TapOffKg = tapOff,
        };
    }

    private static CorrectionPlan Chill(CorrectionProblem problem, double[] kilograms, double tapOffKg)
    {
        var used = problem.Additions.Zip(kilograms).Where(a => a.Second > 0).ToList();
        var unknown = used.Where(a => Heat(a.First, problem) is null).Select(a => a.First.Code).ToList();
        var empty = new CorrectionPlan { Plan = new ChargePlan { Status = PlanStatus.Optimal }, HeatUnknown = unknown };
        if (unknown.Count > 0) return empty;
        var bath = problem.Bath.Kg - tapOffKg;
        return empty with
        {
            TemperatureDropC = AdditionHeat.DropK(bath, used.Select(a => (a.Second, Heat(a.First, problem)!.Value))),
        };
    }

    // Iron and steel have a heat content by default; an alloy or a carburiser must bring its own.
    private static double? Heat(ChargeMaterial addition, CorrectionProblem problem) =>
        addition.HeatKWhPerTonne ?? AdditionHeat.SteelKWhPerTonne(addition.Composition.Analysis, problem.TemperatureC);

    private static ArgumentException NoCost(CorrectionProblem problem) =>
        new($"Tapping off {problem.MaxTapOffKg} kg needs its cost.", nameof(problem));
}
