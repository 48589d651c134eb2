using MeltShop.Charging.Formulation;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Conflicts;

/// <summary>The liquid mass nearest to the one wanted that stock and shares allow.</summary>
internal static class ReachableMass
{
    /// <summary>Null where shares, stock and compulsory masses leave no charge at all, and where that could not be decided.</summary>
    public static double? Nearest(MeltFormulation formulation, Budget budget)
    {
        if (!SharesCanSum(formulation, budget)) return null;
        // The first row of every program is the liquid mass.
        var program = formulation.Program([]).Free()
            .With(new Column("missing", 1, 0, double.PositiveInfinity), (0, 1))
            .With(new Column("too much", 1, 0, double.PositiveInfinity), (0, -1));
        var solution = Undecided.OrWithout(() => ProgramSolver.Solve(program, budget));
        return solution.IsOptimal ? formulation.Melt.LiquidKg(formulation.Kilograms(solution.Values)) : null;
    }

    /// <summary>Whether some charge has shares that all hold, whatever its mass.</summary>
    private static bool SharesCanSum(MeltFormulation formulation, Budget budget)
    {
        var weighed = new Row("all shares", formulation.WeighedPerUnit, 1, 1);
        var columns = formulation.Columns.Select(c => c with { Cost = 0, Least = 0, Most = double.PositiveInfinity, Whole = false });
        return Undecided.OrWithout(() => ProgramSolver.Solve(new([.. columns], [weighed, .. formulation.ShareRows]), budget)).IsOptimal;
    }
}
