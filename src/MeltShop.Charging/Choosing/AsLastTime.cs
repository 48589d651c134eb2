using MeltShop.Charging.Formulation;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Choosing;

/// <summary>
/// The plan nearest to the last charge: the sum over the materials of |mass − last share × all that is weighed| is least, and that is linear in the masses.
/// </summary>
internal static class AsLastTime
{
    public static Solution Find(MeltFormulation formulation, IReadOnlyDictionary<string, double> lastKg, Budget budget)
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

        return InOrder.Solve(program, [.. distances], budget);
    }
}
