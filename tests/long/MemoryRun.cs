using System.Diagnostics;
using MeltShop.Charging;
using MeltShop.Charging.Tests.Support;

namespace MeltShop.Long;

/// <summary>Memory of the process over 100,000 plans: native solvers are given back.</summary>
internal static class MemoryRun
{
    private const int Plans = 100_000;

    public static bool Run()
    {
        var problem = GreyIron.Problem(50, Case.Limit(MeltShop.Metallurgy.Elements.Element.C, 3.3, 3.4), Case.Limit(MeltShop.Metallurgy.Elements.Element.Si, 1.9, 2));
        var settled = 0L;
        for (var i = 1; i <= Plans; i++)
        {
            ChargeOptimiser.Plan(problem);
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
