using MeltShop.Charging.Tests.Support;

namespace MeltShop.Charging.Tests.Choosing;

/// <summary>Plans to choose from of generated yards, seed by seed, against GLPK. The long suite runs hundreds of them.</summary>
public class ChoicesAgainstGlpkTests
{
    [Fact]
    public async Task RandomYards_EveryPlan_IsWhatGlpkFindsForTheSameWish()
    {
        // Counting materials is what takes GLPK long: only in the first yards, which it counts within seconds.
        var outcomes = await Task.WhenAll(Enumerable.Range(1, 16).Select(seed => ChoiceComparison.Of(seed, withFewest: seed <= 6, TestContext.Current.CancellationToken)));

        var faults = outcomes.SelectMany(found => found is null ? [] : found.Faults.Concat(found.Unjudged)).ToList();
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        Assert.InRange(outcomes.Count(o => o is not null), 10, 16);
    }

    [Fact]
    public async Task RandomYards_UnderConfidence_EveryPlan_IsWhatGlpkFindsForTheSameWish()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(1, 4).Select(seed => ChoiceComparison.Of(seed, withFewest: false, TestContext.Current.CancellationToken, pieces: true, confidence: 80)));

        var faults = outcomes.SelectMany(found => found is null ? [] : found.Faults.Concat(found.Unjudged)).ToList();
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        Assert.InRange(outcomes.Count(o => o is not null), 2, 4);
    }
}
