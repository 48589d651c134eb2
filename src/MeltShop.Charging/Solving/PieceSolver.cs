using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Workers;

namespace MeltShop.Charging.Solving;

/// <summary>
/// Programs with whole pieces. The numbers of pieces come from branch and bound over planes in place of the cones; the masses beside them from the continuous
/// program with those numbers held, since a mixed solver's own tolerances are too wide for six digits. Planes where that one touches the cones tell branch and bound what
/// its numbers really cost (M. A. Duran, I. E. Grossmann, "An outer-approximation algorithm for a class of mixed-integer nonlinear programs", Mathematical Programming 36
/// (1986) 307–339); where nothing is possible with its numbers, planes where the masses miss the cones least rule those numbers out at once (R. Fletcher, S. Leyffer, "Solving
/// mixed integer nonlinear programs by outer approximation", Mathematical Programming 66 (1994) 327–349). The first planes are where the program without whole numbers
/// touches the cones.
/// </summary>
internal static class PieceSolver
{
    private const int MostRounds = 100;

    /// <summary>How much cheaper the numbers of the best plan may look to a mixed solver by its tolerances, as a share of the cost: that is six digits.</summary>
    private const double MostBlur = 1e-6;

    /// <summary>How far a row may be missed by numbers that a mixed solver found where the continuous program calls them impossible: what its tolerances leave, in the row's own scale.</summary>
    private const double MostMissed = 1e-7;

    public static Solution Solve(LinearProgram program, Budget budget)
    {
        // What is impossible without whole numbers is so with them.
        var relaxed = Undecided.OrWithout(() => ProgramSolver.Continuous(Relaxed(program), budget));
        if (relaxed.Status == PlanStatus.Infeasible) return relaxed;
        var (rows, best, priced, impossible) = (program.Rows.ToList(), (Solution?)null, new HashSet<string>(), new HashSet<string>());
        if (relaxed.IsOptimal) rows.AddRange(Touching(program.Rows, relaxed.Values, round: -1));
        var end = SearchEnd.Undecided;
        for (var round = 0; round < MostRounds; round++)
        {
            var answer = PieceWorkers.Solve(MixedQuestion.Of(program.Columns, rows, budget.Left), budget);
            if (answer.Status == PlanStatus.Infeasible)
            {
                // No plane leaves out a plan that was found: a solver that says so errs, and proves nothing.
                if (best is not null) break;
                return Solution.Without(PlanStatus.Infeasible);
            }

            if (answer.Values is null)
            {
                end = answer.End;
                break;
            }

            var found = Round(program, answer.Values);
            var held = Undecided.OrWithout(() => ProgramSolver.Continuous(Held(program, found), budget));
            if (held.IsOptimal && (best is null || Cost(held.Values) < Cost(best.Values))) best = held;

            // The planes leave out nothing that is possible: what costs as little as the program with planes is the cheapest.
            if (best is not null && Cost(best.Values) <= Cost(found) + NativeProgram.PiecesGap) return WithProof(best, answer);
            if (answer.Status == PlanStatus.TimeLimit)
            {
                end = answer.End;
                break;
            }

            var nearest = held.IsOptimal ? [] : Nearest(found, round);
            List<Row> planes = [.. ProgramSolver.Planes(program.Rows, found, round), .. held.IsOptimal ? Touching(program.Rows, held.Values, round) : nearest];
            if (planes.Count == 0 && best is null && IsKept(found)) return WithProof(new(PlanStatus.Optimal, program with { Rows = rows }, found, [], []), answer);
            rows.AddRange(planes);
            var numbers = string.Join(' ', found.Where((_, j) => program.Columns[j].Whole));
            var isNew = held.IsOptimal ? priced.Add(numbers) : nearest.Count == 0 || impossible.Add(numbers);
            if (planes.Count > 0 && isNew) continue;
            if (best is null) break;

            // Numbers that were priced or ruled out already and look cheaper still: only the mixed solver's tolerances are left.
            var isBlur = Cost(best.Values) - Cost(found) <= MostBlur * Math.Abs(Cost(found));
            return WithProof(best, isBlur ? answer : new MixedAnswer(PlanStatus.TimeLimit, found, Cost(found)) { End = SearchEnd.Undecided });
        }

        return best is null ? Dive.Find(program, relaxed, end, budget.AtLeast(Dive.Time)) : WithProof(best, MixedAnswer.Without(end));

        double Cost(double[] values) => program.Cost(values[..program.Columns.Count]);

        bool IsKept(double[] found) => program.Rows.All(r => r.Violation(found) <= MostMissed)
            && program.Columns.Zip(found).All(c => c.Second >= c.First.Least - MostMissed && c.Second <= c.First.Most + MostMissed);

        // Linear rows alone leave nothing only by the mixed solver's tolerances, and a search that was not decided has no point to tell.
        List<Row> Nearest(double[] found, int round)
        {
            var nearest = Undecided.OrWithout(() => Possibility.Nearest(Held(program, found), budget));
            return nearest.IsOptimal ? ProgramSolver.Planes(program.Rows, nearest.Values[..program.Columns.Count], round) : [];
        }

        Solution WithProof(Solution solution, MixedAnswer answer) =>
            solution with { Status = answer.Status!.Value, End = answer.End, Bound = answer.Bound ?? (relaxed.IsOptimal ? Cost(relaxed.Values) : null) };
    }

    /// <summary>Planes where a solution touches the cones.</summary>
    private static IEnumerable<Row> Touching(IReadOnlyList<Row> rows, double[] values, int round)
    {
        var here = values[..rows[0].Coefficients.Length];
        return rows.Where(r => r.Scatter is not null && r.ScatterAt(here) > 0 && r.Violation(here) >= -ProgramSolver.Tolerance).Select(r => r.Tangent(here, $"{r.Name}, touched {round + 1}"));
    }

    /// <summary>The program as if pieces could be cut.</summary>
    private static LinearProgram Relaxed(LinearProgram program) => program with { Columns = [.. program.Columns.Select(c => c with { Whole = false })] };

    private static double[] Round(LinearProgram program, double[] values) =>
        [.. values.Select((v, j) => program.Columns[j].Whole ? Math.Round(v) : v)];

    private static LinearProgram Held(LinearProgram program, double[] found) => program with
    {
        Columns = [.. program.Columns.Select((c, j) => c.Whole ? c with { Least = found[j], Most = found[j], Whole = false } : c)],
    };
}
