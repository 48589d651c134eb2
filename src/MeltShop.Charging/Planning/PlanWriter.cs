using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Charging.Planning;

/// <summary>Puts what was found into the words of a plan.</summary>
internal static class PlanWriter
{
    public static ChargePlan Write(PlanStatus status, MeltResult result, MeltPrices prices, bool isExplained) => new()
    {
        Status = status,
        TotalCost = result.Costs.Total,
        Costs = result.Costs,
        LiquidKg = result.Metal.Kg,
        Lines = [.. Lines(result)],
        Analysis = result.Analysis,
        AssumedZero = AssumedZero(result.Melt),
        Limits = [.. result.Melt.Limits.Select((_, i) =>
        {
            var binding = result.Binding(i);
            return Limit(result, i) with { MarginalCost = prices.MarginalCost(i, binding), LoweredCost = isExplained ? prices.MarginalCost(i, binding, sign: -1) : null };
        })],
        Bounds = isExplained ? prices.Bounds() : [],
        Materials = [.. result.Melt.Columns.Select((column, j) => (column, j)).Where(c => c.column.Material is not null)
            .Select(c => new MaterialOutcome(c.column.Name, result.Kilograms[c.j], prices.PriceToEnterPerTonne(c.j)))],
    };

    /// <summary>The same plan with what is not proven of it.</summary>
    public static ChargePlan Unproven(ChargePlan plan, Solution solution, double costScale)
    {
        var weighed = plan.Costs.Weighed;
        var gap = weighed - solution.Bound * costScale;
        return plan with { End = solution.End, GapPercent = gap is { } money && weighed != 0 ? 100 * Math.Max(0, money) / Math.Abs(weighed) : null };
    }

    /// <summary>Where the search came to no end and found no plan.</summary>
    public static ChargePlan WithoutPlan(MeltFormulation formulation, Solution solution) => new()
    {
        Status = solution.Status,
        End = solution.End,
        AssumedZero = AssumedZero(formulation.Melt),
        Continuous = solution.Continuous is { } values ? ChargeCheck.Of(new MeltResult(formulation.Melt, formulation.ContinuousKilograms(values))) : null,
    };

    /// <summary>Where more of some materials would always be cheaper.</summary>
    public static ChargePlan WithoutEnd(Melt melt, IReadOnlyList<string> endless) => new()
    {
        Status = PlanStatus.TimeLimit, End = SearchEnd.Endless, Endless = endless, AssumedZero = AssumedZero(melt),
    };

    public static IEnumerable<PlanLine> Lines(MeltResult result)
    {
        var weighed = result.WeighedKg;
        for (var j = 0; j < result.Kilograms.Length; j++)
        {
            if (result.Melt.Columns[j].Material is { } material && result.Kilograms[j] > 0)
                yield return new(material.Code, result.Kilograms[j], 100 * result.Kilograms[j] / weighed);
        }
    }

    /// <summary>Where a charge sits on a limit, without what the limit costs.</summary>
    public static LimitOutcome Limit(MeltResult result, int index)
    {
        var limit = result.Melt.Limits[index];
        return new(limit.Quantity.Name, result.Values[index], limit.Min, limit.Max, result.Binding(index), MarginalCost: null)
        {
            StandardDeviation = result.Deviations[index],
        };
    }

    /// <summary>An empty furnace holds nothing that could have been measured.</summary>
    public static IReadOnlyList<Element> AssumedZero(Melt melt)
    {
        var start = melt.Start;
        return start.Kg > 0 ? [.. melt.Limits.SelectMany(l => l.Quantity.AssumedZero(start.Analysis)).Distinct().Order()] : [];
    }
}
