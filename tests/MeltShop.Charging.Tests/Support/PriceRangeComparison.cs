using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.WhatIf;

namespace MeltShop.Charging.Tests.Support;

/// <summary>
/// Ranges of one generated yard against GLPK at moved prices: the least cost is concave in a price, equal to that of the plan within the
/// range and below it outside.
/// </summary>
internal static class PriceRangeComparison
{
    /// <summary>Number of ends that were compared, and what does not agree.</summary>
    public static async Task<(int Ends, IReadOnlyList<string> Faults)> Of(int seed, int mostMaterials, CancellationToken cancellation)
    {
        var problem = RandomYard.Charge(seed);
        var plan = ChargeOptimiser.Plan(problem, cancellation);
        if (plan.Status != PlanStatus.Optimal) return (0, []);
        var (ends, faults) = (0, new List<string>());
        var used = plan.Lines.ToDictionary(l => l.Code, l => l.Kg);
        foreach (var range in PriceRanges.Of(problem, cancellation).OrderByDescending(r => used.ContainsKey(r.Code)).Take(mostMaterials))
        {
            var kg = used.GetValueOrDefault(range.Code);
            foreach (var (end, outward) in new[] { (range.Least, -1), (range.Most, 1) })
            {
                var far = range.PricePerTonne + outward * 2000;
                if (!await Stays(end is { } e ? e - outward * 1e-4 : far)) faults.Add(FormattableString.Invariant($"seed {seed}, {range}: moves before {end ?? far}"));

                // Where next to nothing gives way, it shows only far beyond: the gain grows with the distance.
                if (end is { } here && await Stays(Beyond(here, 1)) && await Stays(Beyond(here, 100))) faults.Add(FormattableString.Invariant($"seed {seed}, {range}: stays beyond {here}"));
                ends++;

                double Beyond(double price, double times) => price + outward * times * Math.Max(100, 0.02 * Math.Abs(price));
            }

            async Task<bool> Stays(double price)
            {
                var moved = problem with { Materials = [.. problem.Materials.Select(m => m.Code == range.Code ? m with { PricePerTonne = price } : m)] };
                var cost = (await Glpk.LeastCost(moved, cancellation))!.Value;
                var same = plan.TotalCost + kg * (price - range.PricePerTonne) / 1000;

                // The plan moves where something is cheaper than it. GLPK's own tolerances let it stop a little above the least cost where two plans cost the same.
                return same - cost <= 1e-7 * (Math.Abs(same) + problem.MeltKg * 0.3) && cost - same <= 1e-6 * (Math.Abs(same) + problem.MeltKg * 0.3);
            }
        }

        return (ends, faults);
    }
}
