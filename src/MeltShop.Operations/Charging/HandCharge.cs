using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

namespace MeltShop.Operations.Charging;

/// <summary>A charge that a person has made or taken from among several: checked against the question and not changed.</summary>
/// <param name="Checked">What comes of it and what it misses.</param>
public sealed record HandCharge(ChargeEvaluation Checked)
{
    /// <summary>
    /// The same in the form in which plans are kept. Nobody has proven it to be the cheapest, and it has no reasons: marginal costs and
    /// prices to enter belong to the optimum.
    /// </summary>
    public ChargePlan AsPlan => new()
    {
        Status = PlanStatus.TimeLimit,
        TotalCost = Checked.Costs.Total,
        Costs = Checked.Costs,
        CostPerTonne = Checked.CostPerTonne,
        LiquidKg = Checked.LiquidKg,
        Lines = Checked.Lines,
        Analysis = Checked.Analysis,
        AssumedZero = Checked.AssumedZero,
        Limits = Checked.Limits,
    };

    /// <summary>
    /// Checks it. A little less liquid than was wanted is what a person who types whole kilograms gets; more is not, for the furnace may be full.
    /// </summary>
    public static HandCharge Of(ChargeProblem problem, IEnumerable<ChosenMass> masses)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var codes = problem.Materials.Select(material => material.Code).ToHashSet();
        // A material that nothing is taken of need not be among those that can be charged.
        return new(ChargeCheck.Of(Near(problem), masses.Where(mass => mass.Kg > 0 || codes.Contains(mass.Code)).ToDictionary(mass => mass.Code, mass => mass.Kg)));
    }

    internal static ChargeProblem Near(ChargeProblem problem)
    {
        var room = problem.MeltKg * RestQuestion.NearPercent / 100;
        return problem with { MeltKg = problem.MeltKg - room, MeltToleranceKg = problem.MeltToleranceKg + room };
    }

    /// <summary>A kept plan checked once more.</summary>
    public static HandCharge Of(ChargeProblem problem, ChargePlan kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        return Of(problem, kept.Lines.Select(line => new ChosenMass(line.Code, line.Kg)));
    }
}
