using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Planning;

/// <summary>What limits cost and when materials would come in; nothing of it exists with whole pieces or least masses of what is used.</summary>
internal sealed class MeltPrices : IDisposable
{
    private readonly MeltFormulation formulation;
    private readonly MeltResult result;
    private readonly Sensitivity? sensitivity;
    private readonly Lazy<(double Least, double Most)> liquid;

    public MeltPrices(MeltFormulation formulation, LinearProgram program, Solution solution, MeltResult result, Budget budget)
    {
        (this.formulation, this.result) = (formulation, result);
        sensitivity = program.HasWholeColumns || formulation.Melt.HasLeastIfUsed ? null : new Sensitivity(solution, budget);
        liquid = new(() => LiquidRange(solution, budget));
    }

    /// <summary>Change of the total cost for +0.01 on the bound that binds, both raised where both do.</summary>
    public double? MarginalCost(int limitIndex, BindingBound binding)
    {
        if (sensitivity is null) return null;
        if (binding == BindingBound.None) return 0;
        var raised = formulation.Bounds.Where(b => b.LimitIndex == limitIndex && Binds(b, binding)).ToList();
        if (sensitivity.Raising(raised) is not { } rate) return null;

        // Raising a bound weighs on all the liquid. Where plans of equal cost differ in liquid mass, the cheapest way is taken.
        return rate == 0 ? 0 : 0.01 * rate * (rate > 0 ? liquid.Value.Least : liquid.Value.Most) * formulation.CostScale;
    }

    /// <summary>Price at which a material comes in; its own price where it is in.</summary>
    public double? PriceToEnterPerTonne(int column)
    {
        var melt = formulation.Melt;
        if (sensitivity?.Forcing(column) is not { } rate) return null;
        return 1000 * (melt.Columns[column].PricePerKg - rate * formulation.CostScale / melt.UnitKg(melt.Columns[column]));
    }

    public void Dispose() => sensitivity?.Dispose();

    private static bool Binds(LimitBound bound, BindingBound binding) =>
        binding == BindingBound.Both || binding == (bound.IsMax ? BindingBound.Max : BindingBound.Min);

    private (double Least, double Most) LiquidRange(Solution solution, Budget budget)
    {
        if (formulation.Melt.LiquidIsFixed) return (result.Metal.Kg, result.Metal.Kg);
        var (least, most) = OptimalFace.Range(solution, formulation.Liquid, budget);
        var (start, scale) = (formulation.Melt.Start.Kg, formulation.Melt.ScaleKg);
        return (start + least * scale, start + most * scale);
    }
}
