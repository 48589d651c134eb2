using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.WeighingIn;
using MeltShop.Metallurgy.Chain;
using MeltShop.Operations.Storing;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Charging;

/// <summary>
/// The question "what should the rest of the charge be?", from what is really in the furnace. What was weighed in cannot be taken out
/// again; all else may change within the plan's own bounds and today's stock. Of the heel see <see cref="RestHeel"/>.
/// </summary>
public static class RestQuestion
{
    /// <summary>As near to the wanted liquid as a magnet weighs scrap, %: a plan is not given up for less.</summary>
    public const double NearPercent = 1;

    /// <param name="heat">A heat that is being charged.</param>
    /// <param name="yard">What lies in the yard now.</param>
    /// <param name="cancellation">Ends the call.</param>
    /// <returns>Null where nothing is weighed in yet and the heel is the planned one: the plan stands as it is.</returns>
    public static RestAnswer? Answer(HeatView heat, IReadOnlyList<MaterialView> yard, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(heat);
        yard = StoredChoice.Reached(heat.Plan, yard);
        // Also what went into a bath, where its sample turned out to be another heat's: what is in is in.
        var weighings = heat.Weighings.Where(weighing => !weighing.Origin.IsCorrected).ToList();
        var asked = StoredJson.Value<ChargeProblem>(heat.Plan.Problem);
        var heel = RestHeel.Of(heat, asked);
        if (weighings.Count == 0 && heel is { Differs: false, IsOther: false }) return null;
        var (weighed, intoBath) = (Kilograms(weighings.Where(weighing => !weighing.IntoBath)), Kilograms(weighings.Where(weighing => weighing.IntoBath)));
        var names = weighings.ToLookup(weighing => weighing.MaterialCode, weighing => weighing.MaterialName);
        var planned = StoredJson.Value<ChargePlan>(heat.Plan.Answer);
        var byHand = StoredChoice.IsByHand(heat.Plan) ? planned : null;
        var answer = Answer(asked, weighed, planned.Lines.Sum(line => line.Kg), yard, byHand, heel.Metal, heat.Heat.CapacityKg, intoBath, cancellation);
        return answer with { Heel = heel, AsItIs = answer.AsItIs is { } standing ? standing with { Heel = heel } : null, Unknown = [.. answer.Unknown.Select(material => material with { Name = names[material.Code].First() })] };
    }

    /// <param name="asked">What was asked before anything was weighed.</param>
    /// <param name="weighedKg">What went in with the charge, kg by code.</param>
    /// <param name="plannedKg">All that was to be weighed in, kg: what a greatest share is a share of.</param>
    /// <param name="yard">What lies in the yard now.</param>
    /// <param name="byHand">The charge where a person made it: it stands as long as it misses nothing new; null for one that was planned.</param>
    /// <param name="heel">What the charge stands on; null for what the plan was made with.</param>
    /// <param name="capacityKg">What the furnace holds, kg: a full one is not filled further for a little more to be near enough; null where no furnace is asked about.</param>
    /// <param name="intoBathKg">What went into a bath, kg by code; null for nothing.</param>
    /// <param name="cancellation">Ends the call.</param>
    public static RestAnswer Answer(
        ChargeProblem asked, IReadOnlyDictionary<string, double> weighedKg, double plannedKg, IReadOnlyList<MaterialView> yard, ChargePlan? byHand = null,
        Metal? heel = null, double? capacityKg = null, IReadOnlyDictionary<string, double>? intoBathKg = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(asked);
        ArgumentNullException.ThrowIfNull(weighedKg);
        ArgumentNullException.ThrowIfNull(yard);
        var known = asked.Materials.Select(material => material.Code).ToHashSet();
        intoBathKg ??= new Dictionary<string, double>();
        var inKg = weighedKg.Concat(intoBathKg).GroupBy(item => item.Key).ToDictionary(group => group.Key, group => group.Sum(item => item.Value));
        var extra = inKg.Keys.Where(code => !known.Contains(code)).ToDictionary(code => code, code => yard.FirstOrDefault(item => item.Code == code));
        List<UnknownMaterial> unknown =
        [
            .. extra.Select(item => (item.Key, item.Value?.Name, Why: item.Value is { } lying ? ChargeMaterials.Gap(lying, weighedKg.ContainsKey(item.Key) ? RecoveryStage.Charge : RecoveryStage.Bath) : UnknownMaterial.Gone))
                .Where(item => item.Why is not null).Select(item => new UnknownMaterial(item.Key, item.Name ?? item.Key, item.Why!)),
        ];
        if (unknown.Count > 0) return new(RestStanding.Unknown, null) { Unknown = unknown };

        var begun = BathMasses.Apart(Begun(asked with { Heel = heel ?? asked.Heel }, plannedKg, inKg, yard, extra.Values.Select(item => item!), capacityKg), intoBathKg, yard);
        return Rest(asked, begun, byHand, cancellation) with { AsItIs = WhatIsIn.Of(begun, byHand is null ? [] : Taken(asked, byHand)) };
    }

    private static RestAnswer Rest(ChargeProblem asked, ChargeProblem begun, ChargePlan? byHand, CancellationToken cancellation)
    {
        var rest = Replan.Of(begun, cancellation);
        if (byHand is not null && AsMade(asked, begun, byHand) is { } made) return made with { StillPossible = rest.StillPossible };
        if (rest.IsReachable) return Of(RestStanding.Kept, rest);
        var withMargin = rest.Plan.Status == PlanStatus.Infeasible ? SearchEnd.Proven : rest.End;
        rest = Replan.Of(WithoutMargin(UnseenMetals.Without(begun)), cancellation);
        if (rest.IsReachable) return Of(RestStanding.WithoutMargin, rest) with { End = withMargin };
        return Of(rest.Charge is null ? RestStanding.None : RestStanding.Missed, rest);
    }

    private static Dictionary<string, double> Kilograms(IEnumerable<WeighingView> weighings) =>
        weighings.GroupBy(weighing => weighing.MaterialCode).ToDictionary(group => group.Key, group => group.Sum(weighing => weighing.Kg));

    /// <summary>The limits themselves, without what was asked beyond them.</summary>
    internal static ChargeProblem WithoutMargin(ChargeProblem problem) =>
        problem with { ConfidencePercent = 50, Limits = [.. problem.Limits.Select(limit => limit with { Margin = 0 })] };

    private static RestAnswer Of(RestStanding standing, RestOfCharge rest) => new(standing, rest.Charge is { } charge ? BathMasses.Together(charge) : null) { StillPossible = rest.StillPossible, End = rest.End };

    /// <summary>What was made by hand with what is really in; null where that misses more than the person took upon themselves.</summary>
    private static RestAnswer? AsMade(ChargeProblem asked, ChargeProblem begun, ChargePlan byHand)
    {
        var masses = begun.Materials.ToDictionary(material => material.Code, material => Math.Max(
            begun.WeighedKg.GetValueOrDefault(material.Code), (byHand.Lines.FirstOrDefault(line => line.Code == material.Code)?.Kg ?? 0) - BathMasses.Kg(begun, material.Code)));
        var made = BathMasses.Together(ChargeCheck.Of(HandCharge.Near(begun), masses));
        if (made.Holds) return new(RestStanding.Kept, made);
        return Misses(made).IsSubsetOf(Taken(asked, byHand)) ? new(RestStanding.AsMade, made) : null;
    }

    /// <summary>What a person who made the charge took upon themselves.</summary>
    private static HashSet<(MissKind Kind, string Name, bool IsMax)> Taken(ChargeProblem asked, ChargePlan byHand) => Misses(HandCharge.Of(asked, byHand).Checked);

    /// <summary>What a charge misses, however much.</summary>
    internal static HashSet<(MissKind Kind, string Name, bool IsMax)> Misses(ChargeEvaluation made) => [.. made.Misses.Select(miss => (miss.Kind, miss.Name, miss.IsMax))];

    private static ChargeProblem Begun(
        ChargeProblem asked, double plannedKg, Dictionary<string, double> weighed, IReadOnlyList<MaterialView> yard, IEnumerable<MaterialView> extra,
        double? capacityKg) => asked with
    {
        MeltToleranceKg = Math.Max(asked.MeltToleranceKg, Math.Min(asked.MeltKg * NearPercent / 100, capacityKg - asked.MeltKg ?? double.PositiveInfinity)),
        CapacityKg = capacityKg,
        WeighedKg = weighed,
        Materials =
        [
            .. asked.Materials.Concat(extra.Select(item => ChargeMaterials.Taken(item, new MaterialChoice(item.Code, Include: true, MaxKg: weighed[item.Code]))!)).Select(material =>
                Begun(material, weighed.GetValueOrDefault(material.Code), plannedKg, yard.FirstOrDefault(item => item.Code == material.Code)?.StockKg)),
        ],
    };

    /// <summary>What lies in the yard may be added to what is in; a material that has its greatest share already is full, and stands.</summary>
    private static ChargeMaterial Begun(ChargeMaterial material, double kg, double plannedKg, double? stockKg)
    {
        var isFull = kg > 0 && 100 * kg >= material.MaxPercent * plannedKg;
        return material with
        {
            AvailableKg = material.AvailableKg is { } planned ? kg + Math.Max(0, stockKg ?? planned) : null,
            MaxKg = isFull ? kg : material.MaxKg,
            MaxPercent = isFull ? 100 : material.MaxPercent,
        };
    }
}
