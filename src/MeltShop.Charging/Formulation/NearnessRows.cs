namespace MeltShop.Charging.Formulation;

/// <summary>
/// The price of being away from an aim: a column for the distance, held above it on both sides. Distance × liquid mass is linear
/// in the masses, and so is its price.
/// </summary>
internal static class NearnessRows
{
    public static LinearProgram Add(LinearProgram program, MeltFormulation formulation)
    {
        var limits = formulation.Melt.Limits;
        for (var i = 0; i < limits.Count; i++)
        {
            if (limits[i].Nearness is not { PricePerPointTonne: > 0 } near) continue;
            var below = OfMean(formulation.RowAt(i, limits[i], near.Aim, isMax: false), "above");
            var above = OfMean(formulation.RowAt(i, limits[i], near.Aim, isMax: true), "below");
            var price = near.PricePerPointTonne / 1000 / above.ShiftPerPointKg / formulation.CostScale;
            program = program.With(below, above)
                .With(new Column($"distance: {limits[i].Quantity.Name}", price, 0, double.PositiveInfinity), (program.Rows.Count, 1), (program.Rows.Count + 1, -1));

            // It states no bound of the limit, and an aim is one of the mean.
            Row OfMean(Row row, string side) => row with { Name = $"aim {i + 1}, {limits[i].Quantity.Name} {side}", Bounds = [], Scatter = null };
        }

        return program;
    }
}
