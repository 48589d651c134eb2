using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Operations.Storing;
using MeltShop.Records.Reading.Heats;

namespace MeltShop.Operations.Charging;

/// <summary>The plan that a heat was started from, where its rest could not be planned anew.</summary>
public static class FirstPlan
{
    /// <summary>What solving and a ledger of many lines leave over.</summary>
    private const double Rounding = 1e-6;

    /// <summary>The rest was not planned anew and the plan does not stand either: nothing may be asked for before a metallurgist has looked.</summary>
    /// <param name="heat">A heat that is being charged.</param>
    /// <param name="rest">The rest as it was planned anew; null where it was not asked about.</param>
    /// <param name="hasFailed">It was asked about, and planning broke down.</param>
    public static bool IsStopped(HeatView heat, RestAnswer? rest, bool hasFailed = false) => (hasFailed || rest is { Charge: null }) && !StillStands(heat);

    /// <summary>
    /// Whether what it still wants may be asked for. It may not once something else is in, or more of something than it wanted, or another heel is there: then it
    /// knows neither what the furnace holds nor how much room is left.
    /// </summary>
    /// <param name="heat">A heat that is being charged.</param>
    public static bool StillStands(HeatView heat)
    {
        ArgumentNullException.ThrowIfNull(heat);
        var asked = StoredJson.Value<ChargeProblem>(heat.Plan.Problem);
        var heel = RestHeel.Of(heat, asked);
        if (heel.Differs || heel.IsOther) return false;

        var planned = StoredJson.Value<ChargePlan>(heat.Plan.Answer).Lines.ToDictionary(line => line.Code, line => line.Kg);
        var weighed = heat.Weighings.Where(weighing => !weighing.Origin.IsCorrected)
            .GroupBy(weighing => weighing.MaterialCode).ToDictionary(group => group.Key, group => group.Sum(weighing => weighing.Kg));
        if (weighed.Any(item => item.Value > planned.GetValueOrDefault(item.Key) * (1 + RestQuestion.NearPercent / 100))) return false;

        var yields = asked.Materials.ToDictionary(material => material.Code, material => Arrival.PerKilogram(material.Composition).LiquidKg);
        var toGoKg = planned.Sum(item => Math.Max(0, item.Value - weighed.GetValueOrDefault(item.Key)) * yields.GetValueOrDefault(item.Key, 1));
        var mostKg = asked.MeltKg + Math.Max(asked.MeltToleranceKg, asked.MeltKg * RestQuestion.NearPercent / 100);
        return heat.Heat.LiquidKg + toGoKg <= Math.Min(mostKg, heat.Heat.CapacityKg) * (1 + Rounding);
    }
}
