using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Route;

namespace MeltShop.Operations.Charging;

/// <summary>What a plan says of its rows, in the units of the quantities that they stand for.</summary>
public static class ToldLimit
{
    /// <summary>One row: value, bounds, scatter and cost of a bound; near the row's value where the quantity is curved.</summary>
    public static LimitOutcome Told(this LimitOutcome outcome)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        double? Of(double? row) => row is { } number ? WindowQuantity.Told(outcome.Quantity, number) : null;
        var value = WindowQuantity.Told(outcome.Quantity, outcome.Value);
        if (value == outcome.Value) return outcome;
        var (least, most) = (Of(outcome.Min), Of(outcome.Max));
        return outcome with
        {
            Value = value,
            Min = least,
            Max = most,
            StandardDeviation = outcome.StandardDeviation * value, // d(eˣ) = eˣ dx
            MarginalCost = outcome.MarginalCost / (outcome.Binding is BindingBound.Min ? least : most),
            LoweredCost = outcome.LoweredCost / (outcome.Binding is BindingBound.Min ? least : most),
        };
    }

    /// <summary>All rows, those of one quantity as one: a curved one has a row for each bound.</summary>
    public static IReadOnlyList<LimitOutcome> Told(this ChargePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.Limits.Select(row => Exact(row, plan.Analysis)).GroupBy(outcome => outcome.Quantity).Select(rows => rows.Count() == 1 ? rows.Single() : Joined([.. rows]))];
    }

    /// <summary>Something without which the quantity has no value was not measured and counts as 0: nobody knows it, however it is reckoned.</summary>
    public static bool IsFromZero(this ChargePlan plan, string quantity)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return WindowQuantity.Find(quantity) is { } known && known.Needed.Intersect(plan.AssumedZero).Any();
    }

    /// <summary>
    /// An element that the treatment alloy brings, so that its row follows the sulphur: without a plan it is told as for the most that may be. Not where a
    /// hundredth of a percent of sulphur moves it by less than that.
    /// </summary>
    public static bool IsAtMostSulphur(this QuantityLimit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return Element.TryParse(limit.Quantity.Name, out var element) && element != Element.S && limit.Quantity.Terms.GetValueOrDefault(Element.S) >= 1;
    }

    /// <summary>The same with every bound as it was asked for: what a curved one holds of its margin is given back.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="asked">The limits of its problem.</param>
    public static IReadOnlyList<LimitOutcome> Told(this ChargePlan plan, IReadOnlyList<QuantityLimit> asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        return [.. plan.Told().Select(row => asked.FirstOrDefault(limit => limit.Quantity.Name == row.Quantity && limit.HeldMargin > 0) is { HeldMargin: var margin }
            ? row with { Min = row.Min - margin, Max = row.Max + margin } : row)];
    }

    // Where the row speaks of the plan's own iron, and not of what a treatment makes of it, the quantity is known beside its bound too.
    private static LimitOutcome Exact(LimitOutcome row, Analysis analysis)
    {
        var told = Moved(row.Told(), FurnaceWindow.ToOwnPercent(row.Quantity, row.Value, analysis));
        if (WindowQuantity.Find(row.Quantity) is not { Line: null } curved) return told;
        var own = curved.Rows(new(told.Min, null, told.Max));
        return own.Any(line => Math.Abs(line.Quantity.Value(analysis) - row.Value) < Bounds.Tolerance) ? told with { Value = curved.Value(analysis) } : told;
    }

    private static LimitOutcome Moved(LimitOutcome row, double by) =>
        Math.Abs(by) < Bounds.Tolerance ? row : row with { Value = row.Value + by, Min = row.Min + by, Max = row.Max + by };

    // Each row is exact at its own bound: the one that the value is nearer to tells it.
    private static LimitOutcome Joined(LimitOutcome[] rows)
    {
        var nearest = rows.MinBy(row => Math.Min(Math.Abs(row.Value - row.Min ?? double.PositiveInfinity), Math.Abs(row.Value - row.Max ?? double.PositiveInfinity)))!;
        var bound = rows.FirstOrDefault(row => row.Binding is not BindingBound.None) ?? nearest;
        return nearest with { Min = rows.Max(row => row.Min), Max = rows.Min(row => row.Max), Binding = bound.Binding, MarginalCost = bound.MarginalCost, LoweredCost = bound.LoweredCost };
    }
}
