using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Operations.Storing;
using MeltShop.Records.Reading.Charge;

namespace MeltShop.Operations.Charging;

/// <summary>A kept plan opened again: what it answered then, and what the same question is answered now.</summary>
/// <param name="Difference">The greatest difference of a mass or of the cost, as a share of the melt or of the cost.</param>
public sealed record PlanAgain(ChargeProblem Problem, ChargePlan Kept, ChargePlan Now, double Difference)
{
    /// <summary>More than this is another plan, not rounding.</summary>
    private const double Tolerance = 1e-6;

    /// <summary>The charge was made by hand: then it is checked once more, and not solved.</summary>
    public HandCharge? ByHand { get; private init; }

    public bool IsSame => Difference <= Tolerance;

    /// <summary>Answers the kept question once more.</summary>
    /// <exception cref="System.Text.Json.JsonException">What is kept is not a plan.</exception>
    public static PlanAgain Of(PlanView plan, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var (problem, kept) = (StoredJson.Value<ChargeProblem>(plan.Problem), StoredJson.Value<ChargePlan>(plan.Answer));
        var byHand = StoredChoice.IsByHand(plan) ? HandCharge.Of(problem, kept) : null;
        var now = byHand?.AsPlan ?? ChargeOptimiser.Plan(problem, cancellation);
        return new(problem, kept, now, Apart(kept, now)) { ByHand = byHand };
    }

    private static double Apart(ChargePlan kept, ChargePlan now)
    {
        if (kept.Status != now.Status) return double.PositiveInfinity;
        var cost = Math.Abs(kept.TotalCost - now.TotalCost) / Math.Max(1, Math.Abs(kept.TotalCost));
        var masses = kept.Lines.Select(line => line.Code).Union(now.Lines.Select(line => line.Code))
            .Select(code => Math.Abs(Kg(kept, code) - Kg(now, code)) / Math.Max(1, kept.LiquidKg));
        return masses.Append(cost).Max();
    }

    private static double Kg(ChargePlan plan, string code) => plan.Lines.FirstOrDefault(line => line.Code == code)?.Kg ?? 0;
}
