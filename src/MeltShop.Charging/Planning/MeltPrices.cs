using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Planning;

/// <summary>What limits cost and when materials would come in; nothing of it exists with whole pieces or least masses of what is used.</summary>
internal sealed class MeltPrices : IDisposable
{
    private readonly MeltFormulation formulation;
    private readonly Solution solution;
    private readonly Sensitivity? sensitivity;
    private readonly Lazy<(double Least, double Most)> liquid, weighed;

    public MeltPrices(MeltFormulation formulation, LinearProgram program, Solution solution, MeltResult result, Budget budget)
    {
        (this.formulation, this.solution) = (formulation, solution);
        sensitivity = program.HasWholeColumns || formulation.Melt.HasLeastIfUsed ? null : new Sensitivity(solution, budget);
        liquid = new(() => formulation.Melt.LiquidIsFixed ? (result.Metal.Kg, result.Metal.Kg) : Range(formulation.Liquid, formulation.Melt.Start.Kg));
        weighed = new(() => Range(formulation.WeighedPerUnit, 0));

        (double Least, double Most) Range(double[] function, double startKg)
        {
            var (least, most) = OptimalFace.Range(solution, function, budget);
            return (startKg + least * formulation.Melt.ScaleKg, startKg + most * formulation.Melt.ScaleKg);
        }
    }

    /// <summary>What the plan sits on beside its limits; nothing of it with whole pieces.</summary>
    public IReadOnlyList<BoundOutcome> Bounds() => sensitivity is null ? [] : [.. HeldBound.Of(formulation, solution, sensitivity.Active).Select(Outcome)];

    /// <summary>Change of the total cost for +0.01 on the bound that binds, both raised where both do; with the sign −1 for −0.01.</summary>
    public double? MarginalCost(int limitIndex, BindingBound binding, int sign = 1)
    {
        if (sensitivity is null) return null;
        if (binding == BindingBound.None) return 0;
        var raised = formulation.Bounds.Where(b => b.LimitIndex == limitIndex && Binds(b, binding)).ToList();
        if (sensitivity.Raising(raised, sign) is not { } rate) return null;

        // Raising a bound weighs on all the liquid. Where plans of equal cost differ in liquid mass, the cheapest way is taken.
        return rate == 0 ? 0 : 0.01 * rate * (rate > 0 ? liquid.Value.Least : liquid.Value.Most) * formulation.CostScale;
    }

    private BoundOutcome Outcome(HeldBound held)
    {
        return new(held.Kind, held.Name, held.Binding, held.Bound, held.StaysWhenRaised ? held.Binding == BindingBound.Both ? null : 0 : Cost(1), Cost(-1));

        // A share weighs on all that is weighed, as a limit does on all the liquid.
        double? Cost(int sign) => sensitivity!.Moving(held.Nudge, sign) is not { } rate ? null
            : rate == 0 ? 0 : rate * formulation.CostScale * (!held.IsShare ? 1 : rate > 0 ? weighed.Value.Least : weighed.Value.Most);
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
}
