using System.Runtime.CompilerServices;
using MeltShop.Charging.Problems;

namespace MeltShop.Charging.Formulation;

/// <summary>One bound of one limit: what can clash with others, and what a marginal cost belongs to.</summary>
internal sealed record LimitBound(int LimitIndex, QuantityLimit Limit, bool IsMax)
{
    /// <summary>The bound asked for.</summary>
    public double Asked => (IsMax ? Limit.Max : Limit.Min)!.Value;

    /// <summary>The bound that the plan has to keep: the one asked for, moved inward by the margin.</summary>
    public double Kept => IsMax ? Asked - Limit.Margin : Asked + Limit.Margin;

    /// <summary>Half of the limit's window; where it has only one bound, or no width, a tenth of that bound.</summary>
    public double HalfWindow => Limit is { Min: { } min, Max: { } max } && max > min ? (max - min) / 2 : Math.Abs(Asked) / 10;

    public string Side => IsMax ? "max" : "min";

    public string RowName => $"limit {LimitIndex + 1}, {Limit.Quantity.Name} {Side}";

    /// <summary>A bound is itself and no other: two limits may say the same.</summary>
    public bool Equals(LimitBound? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    public static IReadOnlyList<LimitBound> Of(IReadOnlyList<QuantityLimit> limits)
    {
        var bounds = new List<LimitBound>(2 * limits.Count);
        for (var i = 0; i < limits.Count; i++)
        {
            if (limits[i].Min is not null) bounds.Add(new(i, limits[i], IsMax: false));
            if (limits[i].Max is not null) bounds.Add(new(i, limits[i], IsMax: true));
        }

        return bounds;
    }
}
