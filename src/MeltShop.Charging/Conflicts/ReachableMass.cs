using MeltShop.Charging.Formulation;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Conflicts;

/// <summary>The liquid mass nearest to the one wanted that stock and shares allow.</summary>
internal static class ReachableMass
{
    /// <summary>Null where shares, stock and compulsory masses leave no charge at all.</summary>
    public static double? Nearest(MeltFormulation formulation, Budget budget)
    {
        if (!SharesCanSum(formulation, budget)) return null;
        var (melt, liquid) = (formulation.Melt, formulation.MassRows[0]);
        var columns = formulation.Columns.Select(c => c with { Cost = 0 })
            .Append(new Column("missing", 1, 0, double.PositiveInfinity))
            .Append(new Column("too much", 1, 0, double.PositiveInfinity));
        Row[] rows =
        [
            liquid with { Coefficients = [.. liquid.Coefficients, 1, -1] },
            .. formulation.MassRows.Skip(1).Concat(formulation.ShareRows).Select(r => r with { Coefficients = [.. r.Coefficients, 0, 0] }),
        ];
        var solution = ProgramSolver.Solve(new([.. columns], rows), budget);
        return solution.IsOptimal ? melt.LiquidKg(formulation.Kilograms(solution.Values)) : null;
    }

    /// <summary>Whether some charge has shares that all hold, whatever its mass.</summary>
    private static bool SharesCanSum(MeltFormulation formulation, Budget budget)
    {
        var weighed = new Row("all shares", formulation.WeighedPerUnit, 1, 1);
        var columns = formulation.Columns.Select(c => c with { Cost = 0, Least = 0, Most = double.PositiveInfinity, Whole = false });
        return ProgramSolver.Solve(new([.. columns], [weighed, .. formulation.ShareRows]), budget).IsOptimal;
    }
}
