using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Charging.Tests.Support;

/// <summary>
/// Percents of heats whose materials were drawn from their spreads, written from the words of the calculation contract: the liquid mass stays at its mean.
/// </summary>
internal static class DrawnHeats
{
    /// <summary>For each limit of the problem the share of the heats that keep the bound which binds, and the share that keep all limits.</summary>
    public static (double?[] Binding, double All) Of(ChargeProblem problem, ChargePlan plan, int draws, int seed)
    {
        var random = new Random(seed);
        var (kept, all) = (new int[problem.Limits.Count], 0);
        Element[] elements = [.. problem.Limits.SelectMany(limit => limit.Quantity.Terms.Keys).Distinct()];
        var used = problem.Materials.Select(material => (Material: material, plan.Materials.Single(outcome => outcome.Code == material.Code).Kg)).Where(item => item.Kg > 0).ToList();
        for (var draw = 0; draw < draws; draw++)
        {
            var percents = elements.ToDictionary(element => element, element => Percent(element));
            var keepsAll = true;
            for (var i = 0; i < kept.Length; i++)
            {
                var (limit, binding) = (problem.Limits[i], plan.Limits[i].Binding);
                var value = limit.Quantity.Constant + limit.Quantity.Terms.Sum(term => term.Value * percents[term.Key]);
                if (binding == BindingBound.Min ? value >= limit.Min : value <= limit.Max) kept[i]++;
                keepsAll &= !(value < limit.Min) && !(value > limit.Max);
            }

            all += keepsAll ? 1 : 0;
        }

        return ([.. kept.Select((count, i) => plan.Limits[i].Binding is BindingBound.Min or BindingBound.Max ? count / (double)draws : (double?)null)], all / (double)draws);

        double Percent(Element element) => (problem.Heel.Kg * problem.Heel.Analysis.OrZero(element) + used.Sum(item =>
            item.Kg * item.Material.Composition.MetallicYieldPercent / 100 * item.Material.Composition.Recovery(element) / 100
            * (item.Material.Composition.Analysis.OrZero(element) + item.Material.SpreadPercent.GetValueOrDefault(element) * Gauss()))) / plan.LiquidKg;

        double Gauss() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
    }
}
