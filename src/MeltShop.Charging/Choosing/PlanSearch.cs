using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Choosing;

/// <summary>Makes plans to choose out of what solves find, beside the cheapest plan.</summary>
internal sealed record PlanSearch(ChargeProblem Problem, MeltFormulation Formulation, ChargePlan Cheapest, double[] CheapestKg, double LeastKg)
{
    public PlanToChoose TheCheapest() => Plan(PlanKind.Cheapest, Cheapest.Status, CheapestKg);

    /// <summary>
    /// The plan that a search finds. Where nothing is better by its measure the cheapest plan is the one; where that is not decided in time there is none.
    /// A fault of one search is said of its plan, and takes none of the others away.
    /// </summary>
    public PlanToChoose Found(PlanKind kind, Func<MeltFormulation, Solution> find)
    {
        try
        {
            return Search(kind, find);
        }
        catch (InvalidOperationException fault)
        {
            return new() { Kind = kind, Status = PlanStatus.TimeLimit, Fault = fault.Message };
        }
    }

    private PlanToChoose Search(PlanKind kind, Func<MeltFormulation, Solution> find)
    {
        var solution = Undecided.OrWithout(() => find(Formulation));
        if (solution.Values.Length > 0)
        {
            var kilograms = Formulation.Kilograms(solution.Values);
            var (status, clean) = WithoutTraces(kilograms, find) ?? (solution.Status, kilograms);
            return Plan(kind, status, clean);
        }

        return solution.Status == PlanStatus.Infeasible ? Plan(kind, Cheapest.Status, CheapestKg) : new() { Kind = kind, Status = solution.Status };
    }

    /// <summary>
    /// A few grams bring a plan exactly to a limit, and no scale shows them: what is found without them. Null where there are none, or nothing is
    /// found without.
    /// </summary>
    private (PlanStatus Status, double[] Kilograms)? WithoutTraces(double[] kilograms, Func<MeltFormulation, Solution> find)
    {
        var (problem, clean) = (Problem, ((PlanStatus, double[])?)null);
        while (Traces(kilograms) is { Count: > 0 } traces)
        {
            problem = problem with { Materials = [.. problem.Materials.Select(m => traces.Contains(m.Code) ? m with { MaxKg = 0 } : m)] };
            var formulation = new MeltFormulation(ChargeOptimiser.MeltOf(problem));
            var solution = Undecided.OrWithout(() => find(formulation));
            if (solution.Values.Length == 0) return null;
            kilograms = formulation.Kilograms(solution.Values);
            clean = (solution.Status, kilograms);
        }

        return clean;
    }

    /// <summary>What is too little to weigh, but for what is weighed in or asked for.</summary>
    private HashSet<string> Traces(double[] kilograms)
    {
        var free = Problem.Materials.Where(m => m is { MinKg: 0, MinPercent: 0 } && Problem.WeighedKg.GetValueOrDefault(m.Code) == 0).Select(m => m.Code).ToHashSet();
        return [.. Formulation.Melt.Columns.Where((c, j) => kilograms[j] > 0 && kilograms[j] < LeastKg && free.Contains(c.Name)).Select(c => c.Name)];
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
