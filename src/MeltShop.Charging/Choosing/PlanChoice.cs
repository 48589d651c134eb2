using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Choosing;

/// <summary>Several plans for one question, for whoever weighs more than the price.</summary>
public static class PlanChoice
{
    /// <summary>The cheapest plan and those that are better in something else; each keeps all that was asked.</summary>
    /// <param name="problem">What was asked; what is weighed in already is in every plan.</param>
    /// <param name="wishes">What the other plans are to be like.</param>
    /// <param name="cancellation">Ends the call.</param>
    /// <exception cref="ArgumentException">A wish is not finite or below zero.</exception>
    /// <inheritdoc cref="ChargeOptimiser.Plan" path="/exception"/>
    public static ChoiceOfPlans Of(ChargeProblem problem, ChoiceWishes wishes, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(wishes);
        wishes.Require();
        var melt = ChargeOptimiser.MeltOf(problem);
        return MeltPlanner.InTurn(melt, (formulation, budget) => Of(problem, formulation, wishes, budget), cancellation, isMixed: true);
    }

    private static ChoiceOfPlans Of(ChargeProblem problem, MeltFormulation formulation, ChoiceWishes wishes, Budget budget)
    {
        var (plan, kilograms) = MeltPlanner.Solve(formulation, budget);
        var cheapest = ChargeOptimiser.PerTonne(plan, problem);
        var chargeable = formulation.Melt.Columns.Where(c => formulation.Melt.MostKg(c) > 0).Select(c => c.Name).ToHashSet();
        return new()
        {
            Cheapest = cheapest,
            Plans = kilograms.Length == 0 ? [] : [.. Plans(new(problem, formulation, cheapest, kilograms, wishes.LeastKg), wishes, budget).OrderBy(p => p.Kind)],
            Gone = [.. wishes.LastTimeKg.Where(l => l.Value > 0 && !chargeable.Contains(l.Key)).Select(l => l.Key)],
        };
    }

    /// <summary>What may take long comes last.</summary>
    private static IEnumerable<PlanToChoose> Plans(PlanSearch search, ChoiceWishes wishes, Budget budget)
    {
        var dearness = Dearness.Of(search.Cheapest, wishes.MostDearerPercent);
        yield return search.TheCheapest();
        if (wishes.Returns.Count > 0) yield return search.Found(PlanKind.MostReturns, formulation => MostReturns.Find(formulation, wishes.Returns, dearness, budget));
        if (wishes.LastTimeKg.Values.Sum() > 0) yield return search.Found(PlanKind.AsLastTime, formulation => AsLastTime.Find(formulation, wishes.LastTimeKg, budget));
        var half = budget.Half();
        yield return search.Found(PlanKind.Safest, formulation => SafestPlan.Find(formulation.Melt, dearness, half));
        yield return search.Found(PlanKind.FewestMaterials, formulation => FewestMaterials.Find(formulation, dearness, budget));
    }
}
