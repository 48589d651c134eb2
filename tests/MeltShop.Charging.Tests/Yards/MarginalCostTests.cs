using MeltShop.Charging.Plans;
using MeltShop.Charging.Tests.Support;

namespace MeltShop.Charging.Tests.Yards;

/// <summary>Marginal costs against what a small change really costs. The long suite runs hundreds of yards.</summary>
public class MarginalCostTests
{
    [Theory]
    [InlineData(50, 1, 40, 60)]
    [InlineData(90, 101, 12, 20)]
    public void RandomYards_ABoundMovedALittle_CostsItsMarginalCost(double confidence, int firstSeed, int yards, int least)
    {
        var found = Enumerable.Range(firstSeed, yards).Select(seed => MarginalCostComparison.OfBounds(seed, confidence, TestContext.Current.CancellationToken)).ToList();

        Assert.Empty(found.SelectMany(yard => yard.Faults));
        Assert.InRange(found.Sum(yard => yard.Compared), least, int.MaxValue);
    }

    [Theory]
    [InlineData(50, 1, 20, 100)]
    [InlineData(90, 101, 8, 50)]
    public void RandomYards_ALeftOutMaterialForcedIn_CostsWhatItsPriceToEnterSays(double confidence, int firstSeed, int yards, int least)
    {
        var found = Enumerable.Range(firstSeed, yards).Select(seed => MarginalCostComparison.OfPricesToEnter(seed, confidence, TestContext.Current.CancellationToken)).ToList();

        Assert.Empty(found.SelectMany(yard => yard.Faults));
        Assert.InRange(found.Sum(yard => yard.Compared), least, int.MaxValue);
    }

    [Fact]
    public void RandomYards_ABoundOfMassShareOrRoomMovedALittle_CostsWhatIsSaid()
    {
        (int Seed, double Confidence)[] yards = [(1, 50), (2, 50), (4, 50), (6, 50), (8, 50), (174, 50), (104, 90), (124, 90), (255, 99)];
        var found = yards.Select(yard => BoundComparison.Of(yard.Seed, yard.Confidence, TestContext.Current.CancellationToken)).ToList();

        Assert.Empty(found.SelectMany(yard => yard.Faults));
        MissKind[] kinds = [MissKind.LiquidKg, MissKind.MaterialKg, MissKind.Stock, MissKind.MaterialPercent, MissKind.GroupKg, MissKind.GroupPercent, MissKind.Volume];
        Assert.All(kinds, kind => Assert.NotEqual(0, found.Sum(yard => yard.Compared.GetValueOrDefault(kind))));
    }
}
