using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.WhatIf;

/// <summary>Where a charge is impossible: what would have to be bought to make it possible, and how little of it.</summary>
public static class Purchases
{
    /// <summary>The least of each material that makes the charge possible, and the least of an ideal one.</summary>
    /// <param name="problem">What cannot be met. Materials of it with a limited stock are tried; all their other bounds stay.</param>
    /// <param name="offered">Materials that the shop knows and has none of; their stock is not looked at. None has a code that the problem holds.</param>
    /// <param name="cancellation">Ends the call.</param>
    /// <exception cref="ArgumentException">A code occurs twice.</exception>
    /// <inheritdoc cref="ChargeOptimiser.Plan" path="/exception"/>
    public static WhatToBuy Of(ChargeProblem problem, IReadOnlyList<ChargeMaterial> offered, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(offered);
        var all = problem with { Materials = [.. problem.Materials, .. offered.Select(m => m with { AvailableKg = 0 })] };
        if (all.Materials.GroupBy(m => m.Code).FirstOrDefault(g => g.Count() > 1) is { } twice) throw new ArgumentException($"{twice.Key} occurs twice.", nameof(offered));
        var limited = all.Materials.Where(m => m.AvailableKg is not null).ToList();
        var (possible, isUncertain) = (new List<Purchase>(), false);
        foreach (var material in limited)
        {
            if (Least(all, material, ref isUncertain, cancellation) is { } purchase) possible.Add(purchase);
        }

        return new(
            [.. possible.OrderBy(p => p.Charge.Costs.Total)],
            IdealPurchase.Least(problem, ref isUncertain, cancellation)) { IsUncertain = isUncertain };
    }

    private static Purchase? Least(ChargeProblem problem, ChargeMaterial material, ref bool isUncertain, CancellationToken cancellation)
    {
        var unlimited = problem with { Materials = [.. problem.Materials.Select(m => m == material ? m with { AvailableKg = null } : m)] };
        var melt = ChargeOptimiser.MeltOf(unlimited);
        var result = Solve(melt, c => c.Name == material.Code, ref isUncertain, cancellation);
        if (result is null) return null;
        var bought = result.Sum(c => c.Name == material.Code ? 1 : 0) - Math.Max(material.AvailableKg!.Value, problem.WeighedKg.GetValueOrDefault(material.Code));
        return bought > 1e-9 * melt.ScaleKg ? new(material.Code, bought, ChargeCheck.Of(result)) : null;
    }

    /// <summary>The charge with the least mass of some materials, and the cheapest of those; null where there is none, or none was found in time: then it is uncertain.</summary>
    internal static MeltResult? Solve(Melt melt, Func<MeltColumn, bool> isBought, ref bool isUncertain, CancellationToken cancellation)
    {
        var (found, isProven) = MeltPlanner.InTurn(melt, (formulation, budget) =>
        {
            var solution = Undecided.OrWithout(() => InOrder.Solve(formulation.Whole(), formulation.Weighed(c => isBought(c) ? 1 : 0), budget));
            if (solution.Values.Length == 0) return ((MeltResult?)null, solution.Status is PlanStatus.Infeasible);
            var result = new MeltResult(melt, formulation.Kilograms(solution.Values));
            MeltCheck.Require(result);
            return (result, solution.IsOptimal);
        }, cancellation);
        isUncertain |= !isProven;
        return found;
    }
}
