using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Tests.Support;

/// <summary>Rows with scatter of one generated yard against drawn heats: a bound that binds is kept in as many of them as was asked for.</summary>
internal static class ScatterComparison
{
    private const int Draws = 20_000;

    /// <returns>Number of binding bounds that scatter, and what does not agree.</returns>
    public static (int Compared, IReadOnlyList<string> Faults) Of(int seed, double confidence, CancellationToken cancellation)
    {
        var problem = RandomYard.Charge(seed, confidence: confidence);
        var plan = ChargeOptimiser.Plan(problem, cancellation);
        if (plan.Status != PlanStatus.Optimal) return (0, []);
        var kept = DrawnHeats.Of(problem, plan, Draws, seed).Binding;
        // Five standard errors: one bound in a million is farther off by chance.
        var (wanted, room) = (confidence / 100, 5 * Math.Sqrt(confidence / 100 * (1 - confidence / 100) / Draws));
        var binding = plan.Limits.Zip(kept).Where(pair => pair.Second is not null && pair.First.StandardDeviation > 0).ToList();
        var faults = binding.Where(pair => Math.Abs(pair.Second!.Value - wanted) > room)
            .Select(pair => FormattableString.Invariant($"seed {seed}, {pair.First.Quantity}: kept in {100 * pair.Second!.Value:F2} % of the heats"));
        return (binding.Count, [.. faults]);
    }
}
