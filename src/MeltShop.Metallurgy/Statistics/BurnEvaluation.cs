using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Statistics;

/// <summary>What the burns of one sample say about one element.</summary>
/// <param name="Element">The element.</param>
/// <param name="Mean">Mean over all burns that hold it, suspects included, %.</param>
/// <param name="StandardDeviation">With n − 1, percentage points; null for a single burn.</param>
/// <param name="Count">Burns that hold the element.</param>
/// <param name="Range">Highest less lowest, percentage points.</param>
/// <param name="Suspects">Burns that do not fit the others.</param>
/// <param name="Why">
/// Why no test could be made: <c>burns.single</c>, or <c>burns.tooFew</c> (count and fewest: up to three burns no outlier test can
/// tell one from chance unless the repeatability is known). Null where one was made.
/// </param>
public sealed record BurnEvaluation(
    Element Element, double Mean, double? StandardDeviation, int Count, double Range, IReadOnlyList<SuspectBurn> Suspects, Finding? Why)
{
    /// <summary>The test that was made; null where none could be.</summary>
    public BurnTest? Test { get; init; }
}
