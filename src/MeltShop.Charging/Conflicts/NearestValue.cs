using MeltShop.Charging.Formulation;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Conflicts;

/// <summary>
/// The value nearest to a bound that a quantity can reach while other bounds hold. A percent is a ratio of two linear
/// functions where the liquid mass is free; W. Dinkelbach, "On Nonlinear Fractional Programming", Management Science 13 (1967) 492–498, makes
/// it a short series of linear programs: find the value whose row can just be met.
/// </summary>
internal static class NearestValue
{
    private const int MostRounds = 20;

    /// <summary>The value reached, the scatter margin taken off (the bound that could be promised); null where none was found.</summary>
    public static double? Of(MeltFormulation formulation, LimitBound bound, IEnumerable<LimitBound> others, Budget budget)
    {
        try
        {
            return Search(formulation, bound, others, budget);
        }
        catch (UndecidedException)
        {
            // That the bounds clash is known without it; how near one gets is then not said rather than guessed.
            return null;
        }
    }

    private static double? Search(MeltFormulation formulation, LimitBound bound, IEnumerable<LimitBound> others, Budget budget)
    {
        var rest = formulation.Program(others);
        var value = bound.Asked;
        for (var round = 0; round < MostRounds; round++)
        {
            var row = formulation.RowAt(bound, value);
            var solution = ProgramSolver.Solve(Slack(rest, row, bound.IsMax), budget);
            if (!solution.IsOptimal) return null;
            var kilograms = formulation.Kilograms(solution.Values);
            var missing = solution.Values[rest.Columns.Count] / (row.ShiftPerPointKg * formulation.Melt.LiquidKg(kilograms));
            if (!double.IsFinite(missing)) return null;
            value += bound.IsMax ? missing : -missing;
            if (formulation.Melt.LiquidIsFixed || Math.Abs(missing) <= 1e-9 * Math.Max(1, Math.Abs(value))) break;
        }

        return value;
    }

    /// <summary>Minimise by how much the row is missed; below zero it has room to spare.</summary>
    private static LinearProgram Slack(LinearProgram program, Row row, bool isMax) =>
        program.Free().With(row).With(new Column("missing", 1, double.NegativeInfinity, double.PositiveInfinity), (program.Rows.Count, isMax ? -1 : 1));
}
