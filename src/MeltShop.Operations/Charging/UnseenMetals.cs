using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Operations.Charging;

/// <summary>
/// Metals whose harm no limit of the target shows. By the limits alone nickel would be the best iron there is where no limit speaks of nickel, so it is
/// neither proposed for a charge that misses its target nor to be bought for one (common practice, no source).
/// </summary>
public static class UnseenMetals
{
    /// <summary>A material that is mostly of one element is there for that element, %.</summary>
    private const double Mostly = 50;

    /// <summary>The problem with no more of them than was weighed in or is asked for.</summary>
    public static ChargeProblem Without(ChargeProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var seen = problem.Limits.SelectMany(Seen).Append(Element.Fe).ToHashSet();
        return problem with
        {
            Materials =
            [
                .. problem.Materials.Select(material => Element.All.Any(element => !seen.Contains(element) && material.Composition.Analysis.OrZero(element) > Mostly) && material.MinPercent <= 0
                    ? material with { MaxKg = Math.Min(material.MaxKg ?? double.PositiveInfinity, Math.Max(material.MinKg, problem.WeighedKg.GetValueOrDefault(material.Code))) } : material),
            ],
        };
    }

    // A most is harmed by more of it; a least asks for more, or for less.
    private static IEnumerable<Element> Seen(QuantityLimit limit) =>
        limit.Quantity.Terms.Where(term => limit.Max is not null && term.Value > 0 || limit.Min is not null && term.Value != 0).Select(term => term.Key);
}
