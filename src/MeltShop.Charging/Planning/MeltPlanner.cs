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
    public static (ChargePlan Plan, double[] Kilograms) Plan(Melt melt, CancellationToken cancellation) =>
        InTurn(budget => Solve(new MeltFormulation(melt), budget), cancellation);

    /// <summary>Does something that solves programs, as soon as a core is free.</summary>
    /// <exception cref="OperationCanceledException">The caller wished to stop, waiting or solving.</exception>
    public static T InTurn<T>(Func<Budget, T> solve, CancellationToken cancellation)
    {
        Cores.Wait(cancellation);
        try
        {
            return solve(new Budget(MostTime, cancellation));
        }
        finally
        {
            Cores.Release();
        }
    }

    public static (ChargePlan Plan, double[] Kilograms) Solve(MeltFormulation formulation, Budget budget)
    {
        var program = formulation.Whole();
        var solution = ProgramSolver.Solve(program, budget);
        if (solution.Status == PlanStatus.Infeasible)
        {
            var conflicts = ConflictFinder.Find(formulation, budget);
            return (new ChargePlan { Status = PlanStatus.Infeasible, AssumedZero = PlanWriter.AssumedZero(formulation.Melt), Conflicts = conflicts }, []);
        }

        if (solution.Values.Length == 0) return (new ChargePlan { Status = solution.Status }, []);
        var result = new MeltResult(formulation.Melt, formulation.Kilograms(solution.Values));
        MeltCheck.Require(result);
        MeltCheck.RequireCost(result, program.Cost(solution.Values[..program.Columns.Count]) * formulation.CostScale, formulation.CostScale);
        using var prices = new MeltPrices(formulation, program, solution, result, budget);
        return (PlanWriter.Write(solution.Status, result, prices), result.Kilograms);
    }
}
