using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Charging.Choosing;

/// <summary>How far a charge keeps from its limits, at the bound that is nearest. Limits that leave one value only are not counted.</summary>
/// <param name="ConfidencePercent">
/// The least probability, over all bounds one by one, that the bound asked for is kept with analyses that scatter (one-sided, %); null where nothing scatters.
/// </param>
/// <param name="RoomPercent">
/// Distance from the nearest bound, percent of half the window (of a tenth of the bound where it is the only one): 0 on a bound, 100 in the middle; null
/// where there are no bounds.
/// </param>
public sealed record PlanSafety(double? ConfidencePercent, double? RoomPercent)
{
    internal static PlanSafety Of(IReadOnlyList<QuantityLimit> limits, ChargeEvaluation charge)
    {
        double? weakest = null, nearest = null;
        foreach (var bound in LimitBound.Of(limits))
        {
            var outcome = charge.Limits[bound.LimitIndex];
            var distance = bound.IsMax ? bound.Asked - outcome.Value : outcome.Value - bound.Asked;
            if (outcome.StandardDeviation > 0) weakest = Least(weakest, 100 * Normal.Cumulative(distance / outcome.StandardDeviation));
            if (bound.Limit.Min != bound.Limit.Max && bound.HalfWindow > 0) nearest = Least(nearest, 100 * distance / bound.HalfWindow);
        }

        return new(weakest, nearest);
    }

    private static double Least(double? one, double other) => one is { } value ? Math.Min(value, other) : other;
}
