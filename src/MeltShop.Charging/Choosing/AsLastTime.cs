using MeltShop.Charging.Formulation;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Choosing;

/// <summary>
/// The plan nearest to the last charge: the sum over the materials of |mass − last share × all that is weighed| is least, and that is linear in the masses.
/// </summary>
internal static class AsLastTime
{
    /// <param name="formulation">What was asked.</param>
    /// <param name="lastKg">What was charged, kg by code.</param>
    /// <param name="leastKg">Less of a material than this nobody weighs, kg.</param>
    /// <param name="budget">Time for all solves.</param>
    public static Solution Find(MeltFormulation formulation, IReadOnlyDictionary<string, double> lastKg, double leastKg, Budget budget)
    {
        var all = lastKg.Values.Sum();
        var program = formulation.Whole();
        var distances = formulation.Weighed(c => lastKg.GetValueOrDefault(c.Name) > 0 ? 0 : 1).ToList();
        distances.AddRange(Enumerable.Repeat(0.0, program.Columns.Count - distances.Count));
        foreach (var column in formulation.Melt.Columns)
        {
            if (lastKg.GetValueOrDefault(column.Name) is not (> 0 and var kg)) continue;
            var moved = formulation.Weighed(c => (c == column ? 1 : 0) - kg / all);
            program = program
                .With(new Row($"less than last time: {column.Name}", moved, 0, double.PositiveInfinity), new Row($"more than last time: {column.Name}", moved, double.NegativeInfinity, 0))
                .With(new Column($"distance from last time: {column.Name}", 0, 0, double.PositiveInfinity), (program.Rows.Count, 1), (program.Rows.Count + 1, -1));
            distances.Add(1);
        }

        var nearest = InOrder.Solve(program, [.. distances], budget);
        return WithoutTraces(formulation, program, [.. distances], leastKg, nearest, budget);
    }

    /// <summary>A few grams of what was not in the last charge bring it exactly to a limit, and no scale shows them: without them, unless there is no such plan.</summary>
    private static Solution WithoutTraces(MeltFormulation formulation, LinearProgram program, double[] distances, double leastKg, Solution nearest, Budget budget)
    {
        for (var (solution, without) = (nearest, program); solution.Values.Length > 0; solution = InOrder.Solve(without, distances, budget))
        {
            var kilograms = formulation.Kilograms(solution.Values, without.Columns);
            var traces = Enumerable.Range(0, kilograms.Length).Where(j => kilograms[j] > 0 && kilograms[j] < leastKg && program.Columns[j].Least <= 0).ToHashSet();
            if (traces.Count == 0) return solution;
            without = without with { Columns = [.. without.Columns.Select((c, j) => traces.Contains(j) ? c with { Most = 0 } : c)] };
        }

        return nearest;
    }
}
