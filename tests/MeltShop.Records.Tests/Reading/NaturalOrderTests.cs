using MeltShop.Records.Reading;

namespace MeltShop.Records.Tests.Reading;

public sealed class NaturalOrderTests
{
    [Fact]
    public void Names_WithNumbers_AreCounted() => Assert.Equal(
        ["1", "2", "10", "11", "Bay 2", "bay 3", "Bay 10", "furnace-9", "furnace-10", "pig iron", "Pig iron 2"],
        new[] { "furnace-10", "11", "Bay 10", "10", "1", "pig iron", "2", "bay 3", "Pig iron 2", "furnace-9", "Bay 2" }.InNaturalOrder(name => name));

    [Fact]
    public void Names_ThatAreTheSame_StayAsTheyStood() =>
        Assert.Equal([(1, "bin 2"), (2, "BIN 2"), (0, "bin 10")], new[] { (0, "bin 10"), (1, "bin 2"), (2, "BIN 2") }.InNaturalOrder(row => row.Item2));
}
