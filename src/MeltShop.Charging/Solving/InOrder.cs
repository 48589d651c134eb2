using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>Two objectives, one after the other: of what is best by the first, the best by the program's own costs.</summary>
internal static class InOrder
{
    /// <summary>How far the first may be missed when the second is sought, as a share of it where it is above 1.</summary>
    private const double Tolerance = 1e-9;

    /// <summary>Solves twice; where the second solve finds nothing, what the first one found stands, without proof of the second.</summary>
    /// <param name="program">The program with its own costs.</param>
    /// <param name="first">Costs of the first objective, column by column; further columns have none.</param>
    /// <param name="budget">Time for both.</param>
    public static Solution Solve(LinearProgram program, double[] first, Budget budget)
    {
        var priced = program.Priced(first);
        return Solve(priced, least => program.With(Held(priced, least, Tolerance * Math.Max(1, Math.Abs(priced.Cost(least))))), budget);
    }

    /// <summary>Solves a program, and then the one that follows from its solution.</summary>
    /// <param name="first">The program of the first objective.</param>
    /// <param name="second">The program of the second, with as many columns.</param>
    /// <param name="budget">Time for both.</param>
    public static Solution Solve(LinearProgram first, Func<double[], LinearProgram> second, Budget budget)
    {
        var least = ProgramSolver.Solve(first, budget);
        if (least.Values.Length == 0) return least;
        var then = Undecided.OrWithout(() => ProgramSolver.Solve(second(least.Values[..first.Columns.Count]), budget));
        if (then.Values.Length == 0) return then.Status == PlanStatus.TimeLimit ? least with { Status = PlanStatus.TimeLimit, End = then.End } : least;
        return least.Status == PlanStatus.TimeLimit ? then with { Status = PlanStatus.TimeLimit, End = least.End } : then;
    }

    /// <summary>The row that holds the first objective where it is, but for some room.</summary>
    public static Row Held(LinearProgram first, double[] least, double room) =>
        new("first objective", [.. first.Columns.Select(c => c.Cost)], double.NegativeInfinity, first.Cost(least) + room);
}
