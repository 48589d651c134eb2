using MeltShop.Metallurgy.Elements;
using MeltShop.Web.Api.Reading;

namespace MeltShop.Web.Api.Burns;

/// <summary>The question of the burns endpoint, read.</summary>
internal sealed record BurnsQuestion(IReadOnlyList<Analysis> Burns, IReadOnlyDictionary<Element, double> RepeatabilityPercent)
{
    /// <summary>Far more replicate burns than anybody sparks on one sample.</summary>
    public const int Most = 1000;

    public static BurnsQuestion Read(ObjectReader request) => new(
        [.. (request.NeededList("burns", Most, "burns.none") ?? []).Select(burn => burn.AsAnalysis())],
        request.PerElement("repeatability", NumberRule.Repeatability));
}
