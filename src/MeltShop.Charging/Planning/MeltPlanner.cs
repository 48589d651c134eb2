using MeltShop.Charging.Conflicts;
using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;
using MeltShop.Charging.Workers;

namespace MeltShop.Charging.Planning;

/// <summary>From a melt to a plan: formulate, solve, say why, or say what clashes.</summary>
internal static class MeltPlanner
{
    /// <summary>What a plan may take, in a shop.</summary>
    internal static readonly TimeSpan MostTime = TimeSpan.FromSeconds(20);

    private static readonly SemaphoreSlim PlainSeats = new(Seats.Plain);

    private static readonly SemaphoreSlim PieceSeats = new(Seats.Pieces);

    /// <summary>Plans, and gives the kilograms of each column beside the plan.</summary>
    public static (ChargePlan Plan, double[] Kilograms) Plan(Melt melt, CancellationToken cancellation) => InTurn(melt, Solve, cancellation);

    /// <summary>Does something that solves programs of a melt, as soon as there is a seat for it.</summary>
    /// <param name="melt">The melt.</param>
    /// <param name="solve">What to do.</param>
    /// <param name="cancellation">Ends the call.</param>
    /// <param name="isMixed">Whether it solves programs with whole columns even where the melt has no pieces.</param>
    /// <exception cref="OperationCanceledException">The caller wished to stop, waiting or solving.</exception>
    public static T InTurn<T>(Melt melt, Func<MeltFormulation, Budget, T> solve, CancellationToken cancellation, bool isMixed = false)
    {
        var hasPieces = isMixed || melt.HasPieces;
        var seats = hasPieces ? PieceSeats : PlainSeats;
        seats.Wait(cancellation);
        try
        {
            return solve(new MeltFormulation(melt), new Budget(hasPieces ? PieceWorkers.MostTime : MostTime, cancellation));
        }
        finally
        {
            seats.Release();
        }
    }

    public static (ChargePlan Plan, double[] Kilograms) Solve(MeltFormulation formulation, Budget budget) => Solve(formulation, budget, isExplained: false);

    /// <param name="formulation">What to solve.</param>
    /// <param name="budget">Time for all of it.</param>
    /// <param name="isExplained">With what all costs that the plan sits on: where it is degenerate, two more small programs for each.</param>
    public static (ChargePlan Plan, double[] Kilograms) Solve(MeltFormulation formulation, Budget budget, bool isExplained)
    {
        var program = formulation.Whole();
        var solution = Undecided.OrWithout(() => WorthWeighing.Solve(program, formulation.Melt, budget));
        if (solution.Status == PlanStatus.Infeasible)
        {
            var (conflicts, isCertain) = ConflictFinder.Find(formulation, budget);
            return (new ChargePlan { Status = PlanStatus.Infeasible, AssumedZero = PlanWriter.AssumedZero(formulation.Melt), Conflicts = conflicts, MayConflictsBeFewer = !isCertain }, []);
        }

        if (solution.Values.Length == 0) return (PlanWriter.WithoutPlan(formulation, solution), []);
        var kilograms = formulation.Kilograms(solution.Values);
        if (formulation.Melt.Endless(kilograms) is { Count: > 0 } endless) return (PlanWriter.WithoutEnd(formulation.Melt, endless), []);
        var result = new MeltResult(formulation.Melt, kilograms);
        MeltCheck.Require(result);
        MeltCheck.RequireCost(result, program.Cost(solution.Values[..program.Columns.Count]) * formulation.CostScale, formulation.CostScale);
        using var prices = new MeltPrices(formulation, program, solution, result, budget);
        var plan = PlanWriter.Write(solution.Status, result, prices, isExplained);
        return (solution.IsOptimal ? plan : PlanWriter.Unproven(plan, solution, formulation.CostScale), result.Kilograms);
    }
}
