using MeltShop.Charging.Formulation;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Choosing;

/// <summary>The plan with the fewest materials: each that may be left out has a switch, mass ≤ most × switch, and the sum of the switches is least.</summary>
internal static class FewestMaterials
{
    public static Solution Find(MeltFormulation formulation, Dearness dearness, Budget budget)
    {
        var program = dearness.Program(formulation);
        var plain = program.Columns.Count;
        for (var j = 0; j < formulation.Columns.Count; j++)
        {
            if (formulation.Columns[j].Least > 0 || MostOf(formulation, j) is not (> 0 and var most)) continue;
            var mass = new double[program.Columns.Count];
            mass[j] = 1 / most;
            program = program.With(new Row($"in or out: {formulation.Columns[j].Name}", mass, double.NegativeInfinity, 0))
                .With(new Column($"in: {formulation.Columns[j].Name}", 0, 0, 1, Whole: true), (program.Rows.Count, -1));
        }

        return InOrder.Solve(program, [.. program.Columns.Select((_, j) => j < plain ? 0.0 : 1)], budget);
    }

    /// <summary>The most of a column that the melt can take: near to it the switch decides, far above it a thousandth of a switch would do.</summary>
    private static double MostOf(MeltFormulation formulation, int column)
    {
        var (most, liquid) = (formulation.Columns[column].Most, formulation.Liquid[column]);
        return liquid > 0 ? Math.Min(most, (formulation.Melt.MostLiquidKg - formulation.Melt.Start.Kg) / formulation.Melt.ScaleKg / liquid) : most;
    }
}
