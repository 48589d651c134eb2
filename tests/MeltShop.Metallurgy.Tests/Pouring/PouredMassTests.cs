using MeltShop.Metallurgy.Pouring;

namespace MeltShop.Metallurgy.Tests.Pouring;

public class PouredMassTests
{
    [Fact]
    public void Kg_CastingOfFortyTonnes_NeedsFortyEightPoured() =>
        Assert.Equal(48_000, PouredMass.Kg(40_000, 100.0 * 40 / 48), 6); // common practice, no source

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(101)]
    [InlineData(double.NaN)]
    public void Kg_NoYield_IsRefused(double yieldPercent) => Assert.Throws<ArgumentOutOfRangeException>(() => PouredMass.Kg(1, yieldPercent));
}
