using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Workers;

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
        // What is impossible without whole numbers is so with them.
        var relaxed = Undecided.OrWithout(() => ProgramSolver.Continuous(Relaxed(program), budget));
        if (relaxed.Status == PlanStatus.Infeasible) return relaxed;
        var rows = program.Rows.ToList();
        for (var round = 0; round < MostRounds; round++)
        {
            var answer = PieceWorkers.Solve(MixedQuestion.Of(program.Columns, rows, budget.Left), budget);
            if (answer.Status == PlanStatus.Infeasible) return Solution.Without(PlanStatus.Infeasible);
            if (answer.Values is null) return Dive.Find(program, relaxed, answer.End, budget.AtLeast(Dive.Time));
            var status = answer.Status!.Value;
            var found = Round(program, answer.Values);
            var held = ProgramSolver.Continuous(Held(program, found), budget);

            // The planes leave out nothing that is possible: what costs as little as the program with planes is the cheapest.
            if (held.IsOptimal && program.Cost(held.Values) <= program.Cost(found) + NativeProgram.PiecesGap) return WithProof(program, held, answer, relaxed);
            var planes = ProgramSolver.Planes(program.Rows, found, round, MixedTolerance);
            if (planes.Count == 0) return WithProof(program, new(status, program with { Rows = rows }, found, [], []), answer, relaxed);
            if (status == PlanStatus.TimeLimit) break;
            rows.AddRange(planes);
        }

        return Dive.Find(program, relaxed, SearchEnd.OutOfTime, budget.AtLeast(Dive.Time));
    }

    /// <summary>The program as if pieces could be cut.</summary>
    private static LinearProgram Relaxed(LinearProgram program) => program with { Columns = [.. program.Columns.Select(c => c with { Whole = false })] };

    private static Solution WithProof(LinearProgram program, Solution found, MixedAnswer answer, Solution relaxed) =>
        found with { Status = answer.Status!.Value, End = answer.End, Bound = answer.Bound ?? (relaxed.IsOptimal ? program.Cost(relaxed.Values[..program.Columns.Count]) : null) };

    private static double[] Round(LinearProgram program, double[] values) =>
        [.. values.Select((v, j) => program.Columns[j].Whole ? Math.Round(v) : v)];

    private static LinearProgram Held(LinearProgram program, double[] found) => program with
    {
        Columns = [.. program.Columns.Select((c, j) => c.Whole ? c with { Least = found[j], Most = found[j], Whole = false } : c)],
    };
}
