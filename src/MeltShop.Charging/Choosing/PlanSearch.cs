using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Choosing;

/// <summary>Makes plans to choose out of what solves find, beside the cheapest plan.</summary>
internal sealed record PlanSearch(ChargeProblem Problem, MeltFormulation Formulation, ChargePlan Cheapest, double[] CheapestKg)
{
    public PlanToChoose TheCheapest() => Plan(PlanKind.Cheapest, Cheapest.Status, CheapestKg);

    /// <summary>
    /// The plan that a search finds. Where nothing is better by its measure the cheapest plan is the one; where that is not decided in time there is none.
    /// </summary>
    public PlanToChoose Found(PlanKind kind, Func<Solution> find)
    {
        var solution = Undecided.OrWithout(find);
        if (solution.Values.Length > 0) return Plan(kind, solution.Status, Formulation.Kilograms(solution.Values));
        return solution.Status == PlanStatus.Infeasible ? Plan(kind, Cheapest.Status, CheapestKg) : new() { Kind = kind, Status = solution.Status };
    }

    private PlanToChoose Plan(PlanKind kind, PlanStatus status, double[] kilograms)
    {
        var result = new MeltResult(Formulation.Melt, kilograms);
        MeltCheck.Require(result);
        var charge = ChargeCheck.Of(result);
        var safety = PlanSafety.Of(Problem.Limits, charge);
        return new()
        {
            Kind = kind,
            Status = status,
            Charge = charge,
            ExtraCost = charge.Costs.Total - Cheapest.TotalCost,
            Safety = safety,
            Joint = safety.ConfidencePercent is null ? null : JointProbability.Of(Problem, charge.Lines.ToDictionary(l => l.Code, l => l.Kg)),
        };
    }
}
