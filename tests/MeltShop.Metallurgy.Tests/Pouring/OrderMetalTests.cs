using MeltShop.Metallurgy.Pouring;

namespace MeltShop.Metallurgy.Tests.Pouring;

// By hand; common practice, no source.
public class OrderMetalTests
{
    [Theory]
    [InlineData(12, 85, 68, 1500)] // 85 / 0.68 = 125 a casting
    [InlineData(1, 40_000, 80, 50_000)]
    [InlineData(7, 3.5, 100, 24.5)]
    [InlineData(0, 85, 68, 0)]
    public void Kg_OfThePiecesLeft_IsTheirPouredMass(int pieces, double castingKg, double yieldPercent, double kg) =>
        Assert.Equal(kg, OrderMetal.Kg(pieces, castingKg, yieldPercent), 9);

    [Theory]
    [InlineData(-1, 85, 68)]
    [InlineData(1, -85, 68)]
    [InlineData(1, 85, 0)]
    [InlineData(1, 85, 101)]
    public void Kg_OfWhatCannotBe_IsRefused(int pieces, double castingKg, double yieldPercent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => OrderMetal.Kg(pieces, castingKg, yieldPercent));

    [Theory]
    [InlineData(12, 0, 12)]
    [InlineData(12, 11, 1)]
    [InlineData(12, 12, 0)]
    [InlineData(12, 14, 0)] // two spares
    public void PiecesLeft_AfterSoManyPoured_OwesNothing(int ordered, int poured, int left) => Assert.Equal(left, OrderMetal.PiecesLeft(ordered, poured));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(5400, 1)]
    [InlineData(5401, 2)]
    [InlineData(10_800, 2)]
    [InlineData(14_100, 3)]
    public void Heats_OfSixTonnesWithAHeelOfSixHundred_GiveTheMass(double metalKg, int heats) => Assert.Equal(heats, OrderMetal.Heats(metalKg, 6000, 600));

    // 0.1 + 0.2 is a little over 0.3 in binary.
    [Fact]
    public void Heats_ThatFillTheFurnaceButForADoublesLastDigit_AreNotOneMore() => Assert.Equal(3, OrderMetal.Heats(0.1 + 0.2, 0.1, 0));

    [Theory]
    [InlineData(-1, 6000, 600)]
    [InlineData(1, 600, 600)]
    [InlineData(1, 6000, -1)]
    public void Heats_OfAFurnaceThatGivesNothing_AreRefused(double metalKg, double capacityKg, double heelKg) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => OrderMetal.Heats(metalKg, capacityKg, heelKg));
}
