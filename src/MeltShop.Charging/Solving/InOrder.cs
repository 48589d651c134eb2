using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>Two objectives, one after the other: of what is best by the first, the best by the program's own costs.</summary>
internal static class InOrder
{
    /// <summary>How far the first may be missed when the second is sought, in its own scale.</summary>
    private const double Tolerance = 1e-9;

    /// <summary>Solves twice; where the second solve finds nothing, what the first one found stands, without proof of the second.</summary>
    /// <param name="program">The program with its own costs.</param>
    /// <param name="first">Costs of the first objective, column by column; further columns have none.</param>
    /// <param name="budget">Time for both.</param>
    public static Solution Solve(LinearProgram program, double[] first, Budget budget)
    {
        var priced = program.Priced(first);
        var least = ProgramSolver.Solve(priced, budget);
        if (least.Values.Length == 0) return least;
        var best = priced.Cost(least.Values[..program.Columns.Count]);
        var held = new Row("first objective", first, double.NegativeInfinity, best + Tolerance * Math.Max(1, Math.Abs(best)));
        var then = ProgramSolver.Solve(program.With(held), budget);
        if (then.Values.Length == 0) return then.Status == PlanStatus.TimeLimit ? least with { Status = PlanStatus.TimeLimit, End = then.End } : least;
        return least.Status == PlanStatus.TimeLimit ? then with { Status = PlanStatus.TimeLimit, End = least.End } : then;
    }
}
