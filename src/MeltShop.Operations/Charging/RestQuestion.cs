using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Operations.Storing;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Yard;

namespace MeltShop.Operations.Charging;

/// <summary>
/// The question "what should the rest of the charge be?", from what is really in the furnace. What was weighed in cannot be taken out
/// again; all else may change within the plan's own bounds and today's stock. The heel stays the one that was planned with.
/// </summary>
public static class RestQuestion
{
    /// <summary>As near to the wanted liquid as a magnet weighs scrap, %: a plan is not given up for less.</summary>
    public const double NearPercent = 1;

    /// <param name="heat">A heat that is being charged.</param>
    /// <param name="yard">What lies in the yard now.</param>
    /// <returns>Null where nothing is weighed in yet: the plan stands as it is.</returns>
    public static RestOfCharge? Answer(HeatView heat, IReadOnlyList<MaterialView> yard, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(heat);
        var weighed = heat.Weighings.Where(weighing => !weighing.Origin.IsCorrected && !weighing.IntoBath).GroupBy(weighing => weighing.MaterialCode)
            .ToDictionary(group => group.Key, group => group.Sum(weighing => weighing.Kg));
        if (weighed.Count == 0) return null;
        var asked = StoredJson.Value<ChargeProblem>(heat.Plan.Problem);
        var plannedKg = StoredJson.Value<ChargePlan>(heat.Plan.Answer).Lines.Sum(line => line.Kg);
        return Answer(asked, weighed, plannedKg, yard, cancellation);
    }

    /// <param name="asked">What was asked before anything was weighed.</param>
    /// <param name="weighedKg">What is in, kg by code.</param>
    /// <param name="plannedKg">All that was to be weighed in, kg: what a greatest share is a share of.</param>
    /// <param name="yard">What lies in the yard now.</param>
    public static RestOfCharge Answer(
        ChargeProblem asked, IReadOnlyDictionary<string, double> weighedKg, double plannedKg, IReadOnlyList<MaterialView> yard, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(asked);
        ArgumentNullException.ThrowIfNull(weighedKg);
        ArgumentNullException.ThrowIfNull(yard);
        var begun = Begun(asked, plannedKg, weighedKg, yard);
        var plan = ChargeOptimiser.Plan(begun, cancellation);
        if (IsThere(plan)) return new(RestStanding.Kept, begun, plan, []);
        var bare = begun with { ConfidencePercent = 50, Limits = [.. begun.Limits.Select(limit => limit with { Margin = 0 })] };
        plan = ChargeOptimiser.Plan(bare, cancellation);
        return IsThere(plan) ? new(RestStanding.WithoutMargin, bare, plan, []) : LeastHarm.Of(asked, bare, plan, cancellation);
    }

    /// <summary>The greatest liquid mass that still counts as what was asked, kg.</summary>
    internal static double MostKg(ChargeProblem asked) => asked.MeltKg + Math.Max(asked.MeltToleranceKg, asked.MeltKg * NearPercent / 100);

    internal static bool IsThere(ChargePlan plan) => plan.Status != PlanStatus.Infeasible && plan.Lines.Count > 0;

    private static ChargeProblem Begun(ChargeProblem asked, double plannedKg, IReadOnlyDictionary<string, double> weighed, IReadOnlyList<MaterialView> yard)
    {
        var known = asked.Materials.Select(material => material.Code).ToHashSet();
        var extra = yard.Where(item => weighed.ContainsKey(item.Code) && !known.Contains(item.Code))
            .Select(item => ChargeQuestion.Taken(item, new MaterialChoice(item.Code, Include: true, MinKg: 0, MaxKg: 0))!);
        return asked with
        {
            MeltToleranceKg = MostKg(asked) - asked.MeltKg,
            Materials =
            [
                .. asked.Materials.Concat(extra).Select(material => Begun(
                    material, weighed.GetValueOrDefault(material.Code), plannedKg, yard.FirstOrDefault(item => item.Code == material.Code)?.StockKg)),
            ],
        };
    }

    /// <summary>What lies in the yard may be added to what is in; a material that has its greatest share already is full, and stands.</summary>
    private static ChargeMaterial Begun(ChargeMaterial material, double kg, double plannedKg, double? stockKg)
    {
        var available = material.AvailableKg is null ? (double?)null : kg + Math.Max(0, stockKg ?? material.AvailableKg.Value);
        if (kg == 0) return material with { AvailableKg = available };
        var isFull = 100 * kg >= material.MaxPercent * plannedKg;
        return material with
        {
            AvailableKg = available,
            MinKg = Math.Max(material.MinKg, kg),
            MaxKg = isFull ? kg : material.MaxKg is { } most ? Math.Max(most, kg) : null,
            MaxPercent = isFull ? 100 : material.MaxPercent,
            PieceKg = null, // what is in is seldom whole pieces, and what is still to come is weighed
        };
    }
}
