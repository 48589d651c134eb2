using System.Diagnostics;
using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Long;

/// <summary>Memory of the process over 100,000 plans of three kinds in turns (plain, with scatter, one that cannot be met): native solvers are given back.</summary>
internal static class MemoryRun
{
    private const int Plans = 100_000;

    public static bool Run()
    {
        QuantityLimit[] narrow = [Case.Limit(Element.C, 3.3, 3.4), Case.Limit(Element.Si, 1.9, 2)];
        QuantityLimit[] wide = [Case.Limit(Element.C, 3.22, 3.48), Case.Limit(Element.Si, 1.75, 2.1)];
        ChargeProblem[] problems = [GreyIron.Problem(50, narrow), GreyIron.Problem(90, wide), GreyIron.Problem(50, [.. narrow, Case.Limit(Element.Cu, 0.6, null)])];
        PlanStatus[] ends = [PlanStatus.Optimal, PlanStatus.Optimal, PlanStatus.Infeasible];
        var settled = 0L;
        for (var i = 1; i <= Plans; i++)
        {
            var (problem, end) = (problems[i % problems.Length], ends[i % problems.Length]);
            if (ChargeOptimiser.Plan(problem).Status is var status && status != end)
            {
                Console.WriteLine($"plan {i} is {status}, not {end}");
                return false;
            }

            if (i % 10_000 != 0) continue;
            GC.Collect();
            GC.WaitForPendingFinalizers();
            using var process = Process.GetCurrentProcess();
            Console.WriteLine($"{i} plans: {process.WorkingSet64 / 1048576} MB");
            if (i == Plans / 5) settled = process.WorkingSet64;
            if (i == Plans) return process.WorkingSet64 <= settled + 20 * 1048576;
        }

        return false;
    }
}
