using System.Runtime.CompilerServices;
using MeltShop.Charging;
using MeltShop.Charging.Formulation;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Long;

/// <summary>Yards as the bare solver sees them, and larger ones.</summary>
internal static class Yards
{
    private static readonly ConditionalWeakTable<ChargeProblem, LinearProgram> Programs = [];

    /// <summary>The matrix of a yard, made once: a bare solver gets it for nothing.</summary>
    public static (IReadOnlyList<Column> Columns, IReadOnlyList<Row> Rows) Matrix(ChargeProblem problem)
    {
        var program = Programs.GetValue(problem, p => new MeltFormulation(ChargeOptimiser.MeltOf(p)).Whole());
        return (program.Columns, program.Rows);
    }

    /// <summary>The yard with limits on further quantities, sums of its elements with factors from a seed, about what its plan has of them.</summary>
    public static ChargeProblem WithMoreLimits(ChargeProblem problem, int limits, int seed = 20261125)
    {
        var random = new Random(seed);
        var analysis = ChargeOptimiser.Plan(problem).Analysis;
        var elements = problem.Limits.SelectMany(l => l.Quantity.Terms.Keys).Distinct().ToList();
        var more = Enumerable.Range(problem.Limits.Count, Math.Max(0, limits - problem.Limits.Count)).Select(i =>
        {
            var quantity = new LinearQuantity($"quantity {i + 1}", elements.ToDictionary(e => e, _ => random.NextDouble()));
            var value = quantity.Value(analysis);
            return new QuantityLimit(quantity, value * (1 - 0.02 * random.NextDouble()), value * (1 + 0.02 * random.NextDouble()));
        });
        return problem with { Limits = [.. problem.Limits, .. more] };
    }
}
