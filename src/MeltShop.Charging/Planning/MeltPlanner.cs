using MeltShop.Charging.Conflicts;
using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Planning;

/// <summary>From a melt to a plan: formulate, solve, say why, or say what clashes.</summary>
internal static class MeltPlanner
{
    private static readonly TimeSpan MostTime = TimeSpan.FromSeconds(20);

    /// <summary>As many solves at once as there are cores: more would only make all of them late.</summary>
    private static readonly SemaphoreSlim Cores = new(Environment.ProcessorCount);

    /// <summary>Plans, and gives the kilograms of each column beside the plan.</summary>
    public static (ChargePlan Plan, double[] Kilograms) Plan(Melt melt, CancellationToken cancellation)
    {
        Cores.Wait(cancellation);
        try
        {
            return Solve(new MeltFormulation(melt), new Budget(MostTime, cancellation));
        }
        finally
        {
            Cores.Release();
        }
    }

    private static (ChargePlan Plan, double[] Kilograms) Solve(MeltFormulation formulation, Budget budget)
    {
        var program = formulation.Program(formulation.Bounds);
        var solution = ProgramSolver.Solve(program, budget);
        if (solution.Status == PlanStatus.Infeasible)
        {
            var conflicts = ConflictFinder.Find(formulation, budget);
            return (new ChargePlan { Status = PlanStatus.Infeasible, AssumedZero = PlanWriter.AssumedZero(formulation.Melt), Conflicts = conflicts }, []);
        }

        if (solution.Values.Length == 0) return (new ChargePlan { Status = solution.Status }, []);
        var result = new MeltResult(formulation.Melt, formulation.Kilograms(solution.Values));
        MeltCheck.Require(result);
        using var prices = new MeltPrices(formulation, program, solution, result, budget);
        return (PlanWriter.Write(solution.Status, result, prices), result.Kilograms);
    }
}
