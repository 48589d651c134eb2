using MeltShop.Charging.Tests.Support;

namespace MeltShop.Charging.Tests.Yards;

/// <summary>What clashes has to clash, and nothing in it may be spared. The long suite runs hundreds of yards.</summary>
public class ConflictTests
{
    [Theory]
    [InlineData(50, 1, 60)]
    [InlineData(99, 201, 12)]
    public async Task RandomYards_ThatAreImpossible_NameAnIrreducibleSetAndHowNearEachGets(double confidence, int firstSeed, int yards)
    {
        var (sets, largest, faults) = (0, 0, new List<string>());
        foreach (var seed in Enumerable.Range(firstSeed, yards))
        {
            var (members, wrong) = await ConflictComparison.Of(seed, confidence, TestContext.Current.CancellationToken);
            sets += members > 0 ? 1 : 0;
            largest = Math.Max(largest, members);
            faults.AddRange(wrong);
        }

        Assert.Empty(faults);
        Assert.InRange(sets, 3, int.MaxValue);
        Assert.InRange(largest, 2, int.MaxValue);
    }
}
