using MeltShop.Charging.Plans;
using MeltShop.Charging.WhatIf;

namespace MeltShop.Charging.Tests.Support;

/// <summary>What an impossible generated yard lacks, material by material, against GLPK that minimises the mass of that material.</summary>
internal static class PurchaseComparison
{
    /// <summary>Number of materials that were compared, and what does not agree.</summary>
    public static async Task<(int Materials, IReadOnlyList<string> Faults)> Of(int seed, CancellationToken cancellation)
    {
        var problem = RandomYard.Charge(seed);
        if (ChargeOptimiser.Plan(problem, cancellation).Status != PlanStatus.Infeasible) return (0, []);
        var buy = Purchases.Of(problem, [], cancellation);
        var (compared, faults) = (0, new List<string>());
        foreach (var material in problem.Materials.Where(m => m.AvailableKg is not null).Take(8))
        {
            var unlimited = problem with { Materials = [.. problem.Materials.Select(m => m == material ? m with { AvailableKg = null } : m)] };
            var least = await Glpk.Least(unlimited, new([.. problem.Materials.Select(m => m == material ? 1.0 : 0)]), cancellation);
            var bought = buy.Possible.SingleOrDefault(p => p.Code == material.Code);
            compared++;
            var agrees = least is { } kg ? bought is not null && Math.Abs(bought.Kg + material.AvailableKg!.Value - kg) <= 1e-6 * problem.MeltKg && bought.Charge.Holds : bought is null;
            if (!agrees) faults.Add(FormattableString.Invariant($"seed {seed}, {material.Code}: buy {bought?.Kg:R} beyond {material.AvailableKg:R}, GLPK {least:R}"));
        }

        return (compared, faults);
    }
}
