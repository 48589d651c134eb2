using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Charging.Planning;

/// <summary>What comes of a plan by the balance of the metallurgy room, not by the solver's own sums.</summary>
internal sealed class MeltResult
{
    private const double BindingTolerance = 1e-6;

    public MeltResult(Melt melt, double[] kilograms)
    {
        (Melt, Kilograms) = (melt, kilograms);
        var metal = melt.Start;
        // Tapping off comes first: what leaves is the bath as it is, without additions.
        foreach (var j in Enumerable.Range(0, kilograms.Length).OrderBy(j => melt.Columns[j].Arrival is not null))
        {
            // What is left out is added with zero: its elements are known, then, and are in the analysis.
            metal = melt.Columns[j].Arrival is { } arrival ? metal.Plus(arrival, kilograms[j]) : metal.Less(kilograms[j]);
        }

        Metal = metal;
        Analysis = metal.Analysis;
        WeighedKg = melt.Columns.Select((c, j) => c.Material is null ? 0 : kilograms[j]).Sum();
        Values = [.. melt.Limits.Select(l => l.Quantity.Value(Analysis))];
        Deviations = [.. melt.Limits.Select(l => DeviationOf(l.Quantity))];
        Scatters = [.. Deviations.Select(d => melt.Deviations * d)];
    }

    public Melt Melt { get; }

    public double[] Kilograms { get; }

    public Metal Metal { get; }

    public Analysis Analysis { get; }

    public CostParts Costs => new(
        Sum(c => c.PricePerKg),
        Sum(c => c.SlagCostPerKg),
        Sum(c => c.EnergyCostPerKg),
        Sum(c => c.BonusPerKg),
        Melt.Limits.Select((l, i) => l.Nearness is { } near ? near.PricePerPointTonne / 1000 * Metal.Kg * Math.Abs(Values[i] - near.Aim) : 0).Sum());

    public double WeighedKg { get; }

    /// <summary>Value of each limit's quantity.</summary>
    public double[] Values { get; }

    /// <summary>Standard deviation of each limit's quantity.</summary>
    public double[] Deviations { get; }

    /// <summary>How far scatter pushes each limit's bounds inward: z standard deviations of the quantity.</summary>
    public double[] Scatters { get; }

    public BindingBound Binding(int limitIndex)
    {
        var (limit, value, scatter) = (Melt.Limits[limitIndex], Values[limitIndex], Scatters[limitIndex]);
        var min = limit.Min + limit.Margin + scatter >= value - BindingTolerance;
        var max = limit.Max - limit.Margin - scatter <= value + BindingTolerance;
        return (min, max) switch
        {
            (true, true) => BindingBound.Both,
            (true, _) => BindingBound.Min,
            (_, true) => BindingBound.Max,
            _ => BindingBound.None,
        };
    }

    /// <summary>Sum over all columns of something per kilogram × their kilograms.</summary>
    public double Sum(Func<MeltColumn, double> perKg)
    {
        var sum = 0.0;
        for (var j = 0; j < Kilograms.Length; j++) sum += perKg(Melt.Columns[j]) * Kilograms[j];
        return sum;
    }

    /// <summary>Standard deviation of a quantity, in its unit.</summary>
    public double DeviationOf(LinearQuantity quantity)
    {
        if (Metal.Kg <= 0) return 0;
        var variance = 0.0;
        for (var j = 0; j < Kilograms.Length; j++)
        {
            if (Kilograms[j] <= 0) continue;
            var part = Melt.Columns[j].Scatter(quantity.Terms) * Kilograms[j];
            variance += part * part;
        }

        return Math.Sqrt(variance) / Metal.Kg;
    }
}
