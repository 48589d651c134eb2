using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;

namespace MeltShop.Operations.Charging;

/// <summary>What a limit adds to the price of a material that is not in the plan.</summary>
/// <param name="Quantity">The limit.</param>
/// <param name="PerTonne">How much dearer a tonne of the material is by it, in the money of the plan.</param>
public sealed record LimitPressure(string Quantity, double PerTonne)
{
    /// <summary>
    /// The limits that keep a material out, heaviest first. A kilogram of it moves a quantity that sits on its bound, or off it by its scatter, as raising or lowering
    /// that bound would, which costs what the bound costs (linear programming: the reduced cost of a column, row by row).
    /// </summary>
    public static IReadOnlyList<LimitPressure> On(ChargeProblem problem, ChargePlan plan, ChargeMaterial material)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(material);
        if (plan.LiquidKg <= 0) return [];
        var arrival = Arrival.PerKilogram(material.Composition);
        return
        [
            .. problem.Limits.Zip(plan.Limits).Where(row => row.Second.MarginalCost is not null && row.Second.Binding is not BindingBound.None).Select(row =>
            {
                var (limit, outcome) = row;
                var brought = limit.Quantity.Terms.Sum(term => term.Value * 100 * arrival.ElementKg(term.Key)) + (limit.Quantity.Constant * arrival.LiquidKg);
                // Under confidence the melt keeps off its bound by what scatters: a material moves it by what it brings beyond the bound, not beyond the melt.
                var bound = outcome.Binding is BindingBound.Max ? limit.Max - limit.Margin : limit.Min + limit.Margin;
                var moved = 1000 * (brought - ((bound ?? outcome.Value) * arrival.LiquidKg)) / plan.LiquidKg;
                return new LimitPressure(outcome.Quantity, -moved * outcome.MarginalCost!.Value / 0.01);
            }).Where(pressure => pressure.PerTonne > 0).OrderByDescending(pressure => pressure.PerTonne),
        ];
    }
}
