using MeltShop.Charging.Plans;
using MeltShop.Charging.Tests.Support;

namespace MeltShop.Charging.Tests.Yards;

/// <summary>Generated yards, seed by seed, against GLPK. The long suite runs hundreds of them.</summary>
public class YardsAgainstGlpkTests
{
    [Fact]
    public async Task RandomYards_Continuous_CostWhatGlpkSays()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(1, 60).Select(seed => YardComparison.Of(seed, pieces: false, TestContext.Current.CancellationToken)));

        Assert.All(outcomes, o => Assert.True(o.Agrees, o.ToString()));
        Assert.InRange(outcomes.Count(o => o.Plan.Status == PlanStatus.Infeasible), 3, 30);
    }

    [Fact]
    public async Task RandomYards_WithPiecesUnderConfidence_CostWhatGlpkSays()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(1, 8).Select(seed => YardComparison.Of(seed, pieces: true, TestContext.Current.CancellationToken, confidence: 90)));

        Assert.All(outcomes, o => Assert.True(o.Agrees, o.ToString()));
        Assert.InRange(outcomes.Count(o => o.Plan.Status == PlanStatus.Optimal), 3, 8);
    }

    [Fact]
    public async Task RandomYards_WithPieces_CostWhatGlpkSays()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(1, 8).Select(seed => YardComparison.Of(seed, pieces: true, TestContext.Current.CancellationToken)));

        Assert.All(outcomes, o => Assert.True(o.Agrees, o.ToString()));
    }
}
