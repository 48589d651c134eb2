using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Planning;

/// <summary>A bound on a mass, a share or a room that a plan sits on, and how it is moved by one unit.</summary>
internal sealed record HeldBound(MissKind Kind, string Name, BindingBound Binding, double Bound, Nudge Nudge)
{
    public bool IsShare { get; private init; }

    /// <summary>Stock and greatest mass are the same: one of them raised alone changes nothing.</summary>
    public bool StaysWhenRaised { get; private init; }

    /// <summary>All of them, the whole first, then the materials, then what is bounded together.</summary>
    public static IReadOnlyList<HeldBound> Of(MeltFormulation formulation, Solution solution, ActiveSet active)
    {
        var sides = OfRows(formulation, active).Concat(OfColumns(formulation, solution, active));
        return [.. sides.GroupBy(side => (side.Kind, side.Name)).SelectMany(Together).OrderBy(held => held.Kind)];
    }

    /// <summary>Two bounds that leave one value are moved together.</summary>
    private static IEnumerable<HeldBound> Together(IEnumerable<HeldBound> sides)
    {
        var held = sides.ToList();
        if (held is not [var one, var other] || one.Bound != other.Bound) return held;
        var rows = one.Nudge.Rows.Concat(other.Nudge.Rows).DistinctBy(row => row.Key).ToDictionary();
        var columns = one.Nudge.Columns.Concat(other.Nudge.Columns).GroupBy(column => column.Column).Select(c => new ColumnNudge(c.Key, c.Sum(n => n.Least), c.Sum(n => n.Most)));
        return [one with { Binding = BindingBound.Both, Nudge = new(rows, [.. columns]), StaysWhenRaised = one.StaysWhenRaised || other.StaysWhenRaised }];
    }

    private static IEnumerable<HeldBound> OfRows(MeltFormulation formulation, ActiveSet active)
    {
        // They come first in every program, in this order.
        Row[] rows = [.. formulation.MassRows, .. formulation.ShareRows];
        for (var i = 0; i < rows.Length; i++)
        {
            if (rows[i].Asked is not { } asked) continue;
            var nudge = new Nudge(new Dictionary<int, double> { [i] = asked.ShiftPerUnit }, []);
            if (active.Rows[i].Least && asked.Least is { } least) yield return new(asked.Kind, asked.Name, BindingBound.Min, least, nudge) { IsShare = asked.IsShare };
            if (active.Rows[i].Most && asked.Most is { } most) yield return new(asked.Kind, asked.Name, BindingBound.Max, most, nudge) { IsShare = asked.IsShare };
        }
    }

    private static IEnumerable<HeldBound> OfColumns(MeltFormulation formulation, Solution solution, ActiveSet active)
    {
        var melt = formulation.Melt;
        for (var j = 0; j < melt.Columns.Count; j++)
        {
            var (column, unit) = (melt.Columns[j], 1 / melt.UnitKg(melt.Columns[j]));
            if (column.Material is not { } material) continue;

            // What is weighed in already stands, whatever was asked.
            if (active.Columns[j].Least && material.MinKg > column.WeighedKg) yield return new(MissKind.MaterialKg, column.Name, BindingBound.Min, material.MinKg, Moved(new(j, unit, 0)));
            if (!active.Columns[j].Most || column.MostKg <= column.WeighedKg && column.WeighedKg > 0) continue;

            // Nor is it the stock that holds what a limit without any room for scatter keeps out, or a share of zero.
            if (material.MaxPercent == 0 || melt.MostKg(column) < column.MostKg || solution.Solved.Columns[j].Most < formulation.Columns[j].Most) continue;
            var (stock, most) = (material.AvailableKg == column.MostKg, material.MaxKg == column.MostKg);
            if (stock) yield return new(MissKind.Stock, column.Name, BindingBound.Max, column.MostKg, Moved(new(j, 0, unit))) { StaysWhenRaised = most };
            if (most) yield return new(MissKind.MaterialKg, column.Name, BindingBound.Max, column.MostKg, Moved(new(j, 0, unit))) { StaysWhenRaised = stock };
        }

        static Nudge Moved(ColumnNudge column) => new(new Dictionary<int, double>(), [column]);
    }
}
