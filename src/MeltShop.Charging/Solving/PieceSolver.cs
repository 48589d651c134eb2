using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>
/// Programs with whole pieces. The numbers of pieces come from branch and bound; the masses beside them from the continuous program
/// with those numbers held, since a mixed solver's own tolerances are too wide for six digits.
/// </summary>
internal static class PieceSolver
{
    private const int MostRounds = 100;

    /// <summary>How far a mixed solver may miss a row, in the row's scale.</summary>
    private const double MixedTolerance = 1e-6;

    public static Solution Solve(LinearProgram program, Budget budget)
    {
        var rows = program.Rows.ToList();
        for (var round = 0; round < MostRounds; round++)
        {
            using var native = new NativeProgram(program.Columns, rows, NativeProgram.Pieces);
            var status = native.Solve(budget);
            if (!native.HasValues) return Solution.Without(status);
            var found = Round(program, native.Values());
            var held = ProgramSolver.Continuous(Held(program, found), budget);

            // The planes leave out nothing that is possible: what costs as little as the program with planes is the cheapest.
            if (held.IsOptimal && program.Cost(held.Values) <= program.Cost(found) + NativeProgram.PiecesGap) return held with { Status = status };
            var planes = ProgramSolver.Planes(program.Rows, found, round, MixedTolerance);
            if (planes.Count == 0) return new(status, program with { Rows = rows }, found, [], []);
            if (status == PlanStatus.TimeLimit) break;
            rows.AddRange(planes);
        }

        return Solution.Without(PlanStatus.TimeLimit);
    }

    private static double[] Round(LinearProgram program, double[] values) =>
        [.. values.Select((v, j) => program.Columns[j].Whole ? Math.Round(v) : v)];

    private static LinearProgram Held(LinearProgram program, double[] found) => program with
    {
        Columns = [.. program.Columns.Select((c, j) => c.Whole ? c with { Least = found[j], Most = found[j], Whole = false } : c)],
    };
}
