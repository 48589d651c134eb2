using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

namespace MeltShop.Charging.Tests.Support;

/// <summary>Marginal costs of one generated yard against what a small change really costs, on both sides.</summary>
internal static class MarginalCostComparison
{
    /// <summary>
    /// Each bound moved a little. Costs are exact to a linear program, and to the planes' tolerance with scatter: there the step is wider and
    /// curvature allowed for.
    /// </summary>
    /// <returns>Number of binding bounds, and what does not agree.</returns>
    public static (int Compared, IReadOnlyList<string> Faults) OfBounds(int seed, double confidence, CancellationToken cancellation)
    {
        var problem = RandomYard.Charge(seed, confidence: confidence);
        var plan = ChargeOptimiser.Plan(problem, cancellation);
        if (plan.Status != PlanStatus.Optimal) return (0, []);
        var faults = new List<string>();
        for (var i = 0; i < problem.Limits.Count; i++)
        {
            // The cost may bend within a step; where it does, a smaller one has to agree.
            var step = confidence > 50 ? 1e-3 : 1e-5;
            if (Fault(problem, plan, i, step, cancellation) is not null && Fault(problem, plan, i, step / 10, cancellation) is { } fault) faults.Add($"seed {seed}, limit {i}: {fault}");
        }

        return (plan.Limits.Count(limit => limit.Binding != BindingBound.None && limit.MarginalCost is not null), faults);
    }

    /// <summary>Each material that was left out, forced in by a little.</summary>
    /// <returns>Number of prices to enter, and what does not agree.</returns>
    public static (int Compared, IReadOnlyList<string> Faults) OfPricesToEnter(int seed, double confidence, CancellationToken cancellation)
    {
        var problem = RandomYard.Charge(seed, confidence: confidence);
        var plan = ChargeOptimiser.Plan(problem, cancellation);
        if (plan.Status != PlanStatus.Optimal) return (0, []);
        var (compared, faults) = (0, new List<string>());
        for (var j = 0; j < problem.Materials.Count; j++)
        {
            if (plan.Materials[j].Kg > 0) continue;
            compared += plan.Materials[j].PriceToEnterPerTonne is null ? 0 : 1;
            // The cost may bend within a step, and with scatter a smaller one is lost in what solving leaves over: then the price itself is tried.
            var kg = (confidence > 50 ? 1e-4 : 1e-6) * problem.MeltKg;
            if (Fault(problem, plan, j, kg, confidence > 50, cancellation) is { } fault && !(plan.Materials[j].PriceToEnterPerTonne is { } price && ComesInAt(problem, j, price, cancellation)))
            {
                faults.Add($"seed {seed}, {problem.Materials[j].Code}: {fault}");
            }
        }

        return (compared, faults);
    }

    private static string? Fault(ChargeProblem problem, ChargePlan plan, int limit, double step, CancellationToken cancellation)
    {
        var scatters = problem.ConfidencePercent > 50;
        var (right, left) = (Moved(problem, plan, limit, step, cancellation), Moved(problem, plan, limit, -step, cancellation));
        if (plan.Limits[limit].MarginalCost is not { } marginal) return right is null ? null : "raising it is possible";
        if (right is null) return FormattableString.Invariant($"raising it is impossible, marginal cost {marginal}");

        // The least cost is convex in a bound: its slope lies between the changes to the left and to the right. Without scatter the right
        // one is the slope itself.
        var slack = (scatters ? 2e-2 : 1e-3) * (1 + Math.Abs(100 * marginal));
        var least = scatters ? left ?? double.NegativeInfinity : right.Value;
        return 100 * marginal <= right + slack && 100 * marginal >= least - slack ? null : FormattableString.Invariant($"left {left}, right {right}, marginal {100 * marginal}");
    }

    private static string? Fault(ChargeProblem problem, ChargePlan plan, int at, double kg, bool scatters, CancellationToken cancellation)
    {
        var material = problem.Materials[at];
        var (forced, half) = (Forced(problem, at, kg, cancellation), Forced(problem, at, kg / 2, cancellation));
        if (plan.Materials[at].PriceToEnterPerTonne is not { } price) return forced.Status == PlanStatus.Infeasible ? null : "it can come in";

        // Two steps, so that the curvature that scatter brings drops out.
        var (whole, halfway) = ((forced.TotalCost - plan.TotalCost) / kg, (half.TotalCost - plan.TotalCost) / (kg / 2));
        var expected = material.PricePerTonne - 1000 * (2 * halfway - whole);
        var slack = (scatters ? 1e-2 : 1e-3) * (1 + Math.Abs(scatters ? material.PricePerTonne - price : price));
        return Math.Abs(price - expected) <= slack ? null : FormattableString.Invariant($"{price}, forced {expected}");
    }

    /// <summary>A little under its price it is in the cheapest charge, and a little over it is not.</summary>
    private static bool ComesInAt(ChargeProblem problem, int material, double pricePerTonne, CancellationToken cancellation)
    {
        var little = 0.005 * (1 + Math.Abs(problem.Materials[material].PricePerTonne - pricePerTonne));
        return IsIn(-little) && !IsIn(little);

        bool IsIn(double more)
        {
            var priced = problem with { Materials = [.. problem.Materials.Select((m, k) => k == material ? m with { PricePerTonne = pricePerTonne + more } : m)] };
            return ChargeOptimiser.Plan(priced, cancellation).Materials[material].Kg > 1e-9 * problem.MeltKg;
        }
    }

    private static ChargePlan Forced(ChargeProblem problem, int material, double kg, CancellationToken cancellation) =>
        ChargeOptimiser.Plan(problem with { Materials = [.. problem.Materials.Select((m, k) => k == material ? m with { MinKg = kg } : m)] }, cancellation);

    /// <summary>Change of cost per point when a bound is moved; both bounds where both bind.</summary>
    private static double? Moved(ChargeProblem problem, ChargePlan plan, int limit, double step, CancellationToken cancellation)
    {
        var binding = plan.Limits[limit].Binding;
        var moved = problem.Limits[limit] with
        {
            Min = problem.Limits[limit].Min + (binding is BindingBound.Min or BindingBound.Both ? step : 0),
            Max = problem.Limits[limit].Max + (binding is BindingBound.Max or BindingBound.Both ? step : 0),
        };
        var other = ChargeOptimiser.Plan(problem with { Limits = [.. problem.Limits.Select((l, i) => i == limit ? moved : l)] }, cancellation);
        return other.Status == PlanStatus.Optimal ? (other.TotalCost - plan.TotalCost) / step : null;
    }
}
