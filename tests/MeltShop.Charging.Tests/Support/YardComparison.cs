using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Tests.Support;

/// <summary>One generated yard, planned here and by GLPK.</summary>
internal sealed record YardComparison(int Seed, ChargePlan Plan, double? Reference, double Room)
{
    public bool Agrees => Reference is { } cost
        ? Plan.Status == PlanStatus.Optimal && Math.Abs(Plan.TotalCost - cost) <= Room * Math.Abs(cost)
        : Plan.Status == PlanStatus.Infeasible;

    public static async Task<YardComparison> Of(int seed, bool pieces, CancellationToken cancellation, double confidence = 50)
    {
        var problem = RandomYard.Charge(seed, pieces, confidence);
        var plan = await Task.Run(() => ChargeOptimiser.Plan(problem, cancellation), cancellation);
        var reference = await Glpk.LeastCost(problem, cancellation);
        if (reference is null && plan.Status == PlanStatus.Optimal) GlpkGaveUpException.ThrowIfKept(problem, plan.Lines);
        // GLPK keeps a row to 1e-7 of its size: where planes stand for cones that are more than a millionth of the cost.
        return new(seed, plan, reference, confidence > 50 ? 1e-5 : 1e-6);
    }

    public override string ToString() => FormattableString.Invariant($"seed {Seed}: {Plan.Status} {Plan.TotalCost:R}, GLPK {(Reference is null ? "infeasible" : $"{Reference:R}")}");
}
