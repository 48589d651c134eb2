using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>
/// Right-hand derivatives of the least cost. Where as many rows and bounds are active as there are columns, the duals are the
/// only ones and the two sides agree. Elsewhere the vertex is degenerate and a solver's duals are one choice of many: then
/// the derivative is the least cost of a step along the active rows (the linear program tangent to the plan), which by duality is the
/// largest over all optimal duals. A step that is impossible says that the change is.
/// </summary>
internal sealed class Sensitivity : IDisposable
{
    private readonly Solution solution;
    private readonly ActiveSet active;
    private readonly Budget budget;
    private readonly bool dualsAreUnique;
    private readonly Lazy<TangentProgram> tangent;

    public Sensitivity(Solution solution, Budget budget)
    {
        (this.solution, this.budget) = (solution, budget);
        active = new ActiveSet(solution);
        dualsAreUnique = solution.PricesAreUnique || active.Count == solution.Solved.Columns.Count && solution.Solved.Rows.All(r => r.Scatter is null);
        tangent = new(() => new TangentProgram(solution, active));
    }

    /// <summary>What the solution sits on.</summary>
    public ActiveSet Active => active;

    /// <summary>Change of the objective for +1 on some bounds together (−1 where the sign is), per kilogram of liquid; null where they cannot move that way.</summary>
    public double? Raising(IReadOnlyCollection<LimitBound> bounds, int sign)
    {
        return dualsAreUnique ? RateOfDuals(bounds, sign) : OrOneOfTheDuals(() => tangent.Value.Raising(bounds, sign, budget), () => RateOfDuals(bounds, sign));
    }

    /// <summary>Change of the objective for a nudge, or with the sign −1 for its opposite; null where it is impossible.</summary>
    public double? Moving(Nudge nudge, int sign)
    {
        // A column between two bounds that meet stays on the one that is not moved, or cannot: its price alone does not say which.
        var isSmooth = nudge.Columns.All(c => c.Least == c.Most || active.Columns[c.Column] is { Least: false } or { Most: false });
        return dualsAreUnique && isSmooth ? RateOfDuals(nudge, sign) : OrOneOfTheDuals(() => tangent.Value.Moving(nudge, sign, budget), () => RateOfDuals(nudge, sign));
    }

    /// <summary>Change of the objective for the first of a column that is left out; null where it cannot come in.</summary>
    public double? Forcing(int column)
    {
        // What is in the plan already, compulsory or at its stock as it may be, costs nothing to force in.
        if (solution.Values[column] > 0 && active.Columns[column] is { Least: false } || solution.Solved.Columns[column].Least > 0) return 0;
        if (active.Columns[column].Most) return null;
        return dualsAreUnique ? solution.ReducedCosts[column] : OrOneOfTheDuals(() => tangent.Value.Forcing(column, budget), () => solution.ReducedCosts[column]);
    }

    public void Dispose()
    {
        if (tangent.IsValueCreated) tangent.Value.Dispose();
    }

    /// <summary>Where the solver cannot decide the tangent program the plan still stands; the price is then one of several that are right.</summary>
    private static double? OrOneOfTheDuals(Func<double?> exact, Func<double> dual)
    {
        try
        {
            return exact();
        }
        catch (UndecidedException)
        {
            return dual();
        }
    }

    private double RateOfDuals(Nudge nudge, int sign) => sign * (nudge.Rows.Sum(r => r.Value * solution.Duals[r.Key])
        + nudge.Columns.Sum(c => (active.Columns[c.Column].Most ? c.Most : c.Least) * solution.ReducedCosts[c.Column]));

    private double RateOfDuals(IReadOnlyCollection<LimitBound> bounds, int sign)
    {
        var rate = 0.0;
        for (var i = 0; i < solution.Solved.Rows.Count; i++)
        {
            if (solution.Solved.Rows[i].Bounds.Any(bounds.Contains)) rate += solution.Duals[i] * solution.Solved.Rows[i].ShiftPerPointKg;
        }

        return sign * rate;
    }
}
