using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Choosing;

/// <summary>What a plan may cost when it is better than the cheapest one in something else.</summary>
/// <param name="MostCost">The most money.</param>
internal sealed record Dearness(double MostCost)
{
    /// <summary>Some percent of what the cheapest plan costs may come on top, whatever the sign of the cost.</summary>
    public static Dearness Of(ChargePlan cheapest, double percent) =>
        new(cheapest.TotalCost + Math.Max(percent / 100, 1e-9) * Math.Abs(cheapest.TotalCost));

    /// <summary>The program that a plan is the solution of, within the price.</summary>
    public LinearProgram Program(MeltFormulation formulation) => formulation.Whole().With(
        new Row("money", formulation.Weighed(c => c.CostPerKg * formulation.Melt.ScaleKg / formulation.CostScale), double.NegativeInfinity, MostCost / formulation.CostScale));
}
