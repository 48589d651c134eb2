using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Records.Tests.Reading;

public sealed class LotShareTests
{
    private static readonly DateTimeOffset Day = new(2026, 3, 2, 0, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData(0, "")]
    [InlineData(250, "old 250")]
    [InlineData(300, "old 300")]
    [InlineData(450, "old 300, new 150")]
    [InlineData(900, "old 300, new 500, no lot 100")]
    public void Of_AMass_TakesTheOldestLotFirstAndEachAsFarAsItGoes(double kg, string expected) =>
        Assert.Equal(expected, Shares(With(new("used up", 0, Day), new("old", 300, Day), new("overdrawn", -20, Day), new("new", 500, Day)), kg));

    [Theory]
    [InlineData(250, "bin 4 old 250")]
    [InlineData(900, "bin 4 old 300, new 500, bin 7 no lot 100")]
    public void Of_AMaterialInBins_SaysWhereEachShareLies(double kg, string expected) =>
        Assert.Equal(expected, Shares(With(new LotView("old", 300, Day) { Bin = "4" }, new LotView("new", 500, Day)) with { PileBin = "7" }, kg));

    [Fact]
    public void Of_APileInABin_IsAllFromThere() => Assert.Equal("bin 7 no lot 120", Shares(With() with { PileBin = "7" }, 120));

    [Theory]
    [InlineData("4", 700, "new,", "7")]
    [InlineData("7", 800, "old,new,", "4")]
    [InlineData("4 7", 500, "new,", "")]
    [InlineData("9", 1000, "old,new,", "4 7")]
    public void Without_SomeBins_IsWhatLiesElsewhere(string bins, double stockKg, string lots, string left)
    {
        var material = With(new LotView("old", 300, Day) { Bin = "4" }, new LotView("new", 500, Day)) with { StockKg = 1000, PileBin = "7" };

        var reached = material.Without(bins.Split(' '));

        Assert.Equal(stockKg, reached.StockKg);
        Assert.Equal(lots, string.Concat(reached.Lots.Select(lot => lot.Name + ",")));
        Assert.Equal(left, string.Join(' ', reached.Bins()));
    }

    // Nobody counted the pile: all of it is out of reach, and none of it taken for what lies elsewhere.
    [Fact]
    public void Without_TheBinOfAPileThatWasNeverCounted_IsNothing() => Assert.Equal(0, (With() with { PileBin = "7" }).Without(["7"]).StockKg);

    [Fact]
    public void Of_AMaterialWithoutLots_IsNothing()
    {
        Assert.Empty(LotShare.Of(With(), 100));
        Assert.Empty(LotShare.Of(With(new LotView("used up", 0, Day)), 100));
    }

    private static MaterialView With(params LotView[] lots) =>
        new(1, Guid.Empty, "x", "x", MaterialKind.PigIron, MaterialUses.Charge, 400, null, 98, null, null, null, [], false, true, null) { Lots = lots };

    private static string Shares(MaterialView material, double kg) => string.Join(", ", LotShare.Of(material, kg)
        .Select(share => FormattableString.Invariant($"{(share.Bin is null ? "" : $"bin {share.Bin} ")}{share.Lot ?? "no lot"} {share.Kg}")));
}
