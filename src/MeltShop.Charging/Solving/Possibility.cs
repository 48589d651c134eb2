using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>
/// Whether a program has any solution. Without costs planes creep about cones that are just kept or just missed and never end; asked how far the worst cone is missed
/// at least, Newton's method ends there (S. Boyd, L. Vandenberghe, "Convex Optimization", Cambridge University Press 2004, section 11.4.1: phase I methods).
/// </summary>
internal static class Possibility
{
    /// <summary>Room to spare beyond this is not looked for: rows are about 1.</summary>
    private const double EnoughRoom = -1;

    /// <summary>Optimal where there is a solution, infeasible where there is none; else as the search ended.</summary>
    public static Solution Of(LinearProgram program, Budget budget)
    {
        if (!program.Rows.Any(r => r.Scatter is not null) || program.HasWholeColumns) return ProgramSolver.Solve(program.Free(), budget);
        var nearest = Nearest(program, budget);
        return nearest.IsOptimal && nearest.Values[program.Columns.Count] > ProgramSolver.Tolerance ? Solution.Without(PlanStatus.Infeasible) : nearest;
    }

    /// <summary>A solution of the linear rows that misses the worst cone least. How far it misses it is its column after those of the program.</summary>
    public static Solution Nearest(LinearProgram program, Budget budget)
    {
        (int Row, double Coefficient)[] cones = [.. program.Rows.Index().Where(r => r.Item.Scatter is not null).Select(r => (r.Index, double.IsFinite(r.Item.Least) ? 1.0 : -1.0))];
        return ProgramSolver.Solve(program.Free().With(new Column("missed", 1, EnoughRoom, double.PositiveInfinity), cones), budget);
    }
}
