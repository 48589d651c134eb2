using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Charging.Formulation;

/// <summary>
/// Rows of limits. A bound b on a quantity q of the melt, times the liquid mass, is linear in the masses:
/// Σ(qⱼ − b·liquidⱼ)·xⱼ + what is there already ≥ 0 for a lower bound, ≤ 0 for an upper one.
/// </summary>
internal static class LimitRows
{
    public static Dictionary<LimitBound, Row> Of(Melt melt, IReadOnlyList<LimitBound> bounds, double[] unitKg)
    {
        var rows = new Dictionary<LimitBound, Row>(bounds.Count);
        QuantityMass? mass = null;
        foreach (var bound in bounds)
        {
            if (mass?.Quantity != bound.Limit.Quantity) mass = new QuantityMass(bound.Limit.Quantity, melt);
            rows.Add(bound, RowOf(bound, mass, melt, unitKg));
        }

        return rows;
    }

    /// <summary>Two bounds that leave one value and no scatter are one equation: as two rows they would blur what each is worth.</summary>
    public static IEnumerable<Row> Merge(IEnumerable<Row> rows)
    {
        Row? held = null;
        foreach (var row in rows)
        {
            if (held is not null && Same(held, row))
            {
                yield return held with { Most = row.Most, Bounds = [.. held.Bounds, .. row.Bounds] };
                held = null;
                continue;
            }

            if (held is not null) yield return held;
            held = row;
        }

        if (held is not null) yield return held;
    }

    /// <summary>
    /// Two bounds that leave one value leave no room for scatter: what scatters in it cannot come in at all. Said outright, since two
    /// cones that touch in a point are more than a solver's tolerances can tell from none.
    /// </summary>
    /// <returns>The rows, those pairs without scatter, and the columns that are barred.</returns>
    public static (IReadOnlyList<Row> Rows, HashSet<int> Barred) WithoutRoom(IReadOnlyList<Row> rows)
    {
        var barred = new HashSet<int>();
        var kept = rows.ToArray();
        for (var i = 1; i < kept.Length; i++)
        {
            if (kept[i].Scatter is not { } scatter || !LeaveOneValue(kept[i - 1], kept[i])) continue;
            barred.UnionWith(Enumerable.Range(0, scatter.Length).Where(j => scatter[j] > 0));
            (kept[i - 1], kept[i]) = (kept[i - 1] with { Scatter = null }, kept[i] with { Scatter = null });
        }

        return (kept, barred);
    }

    private static bool Same(Row min, Row max) => LeaveOneValue(min, max) && min.Scatter is null && max.Scatter is null;

    private static bool LeaveOneValue(Row min, Row max) =>
        min.Bounds[0] is { IsMax: false } lower && max.Bounds[0] is { IsMax: true } upper
        && lower.LimitIndex == upper.LimitIndex && lower.Kept == upper.Kept;

    private static Row RowOf(LimitBound bound, QuantityMass mass, Melt melt, double[] unitKg)
    {
        var coefficients = new double[unitKg.Length];
        var largest = 0.0;
        for (var j = 0; j < coefficients.Length; j++)
        {
            coefficients[j] = mass.PerKg[j] - bound.Kept * melt.Columns[j].LiquidKg;
            largest = Math.Max(largest, Math.Abs(coefficients[j]));
        }

        var start = (mass.AtStart - bound.Kept * melt.Start.Kg) / melt.ScaleKg;
        largest = Math.Max(largest, Math.Abs(start));
        if (largest == 0) largest = 1;
        for (var j = 0; j < coefficients.Length; j++) coefficients[j] *= unitKg[j] / melt.ScaleKg / largest;
        var (least, most) = bound.IsMax ? (double.NegativeInfinity, -start / largest) : (-start / largest, double.PositiveInfinity);
        return new(bound.RowName, coefficients, least, most)
        {
            Bounds = [bound],
            ShiftPerPointKg = 1 / (largest * melt.ScaleKg),
            Scatter = ScatterOf(mass, melt, unitKg, largest),
        };
    }

    private static double[]? ScatterOf(QuantityMass mass, Melt melt, double[] unitKg, double divisor)
    {
        if (melt.Deviations == 0) return null;
        double[] weights = [.. mass.ScatterPerKg.Select((s, j) => melt.Deviations * s * unitKg[j] / melt.ScaleKg / divisor)];
        return weights.Any(w => w > 0) ? weights : null;
    }

    /// <summary>A quantity's value × mass, per kilogram of each column and of what is there already.</summary>
    private sealed class QuantityMass(LinearQuantity quantity, Melt melt)
    {
        public LinearQuantity Quantity => quantity;

        public double[] PerKg { get; } =
            [.. melt.Columns.Select(c => 100 * quantity.Terms.Sum(t => t.Value * c.ElementKg(t.Key)) + quantity.Constant * c.LiquidKg)];

        public double[] ScatterPerKg { get; } = melt.Deviations == 0 ? [] : [.. melt.Columns.Select(c => c.Scatter(quantity.Terms))];

        public double AtStart { get; } =
            100 * quantity.Terms.Sum(t => t.Value * melt.Start.ElementKg(t.Key)) + quantity.Constant * melt.Start.Kg;
    }
}
