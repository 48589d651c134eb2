using MeltShop.Records.Reading.Yard;

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
        Assert.Equal(expected, string.Join(", ", LotShare.Of([new("used up", 0, Day), new("old", 300, Day), new("overdrawn", -20, Day), new("new", 500, Day)], kg)
            .Select(share => FormattableString.Invariant($"{share.Lot ?? "no lot"} {share.Kg}"))));

    [Fact]
    public void Of_AMaterialWithoutLots_IsNothing()
    {
        Assert.Empty(LotShare.Of([], 100));
        Assert.Empty(LotShare.Of([new("used up", 0, Day)], 100));
    }
}
