using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Tests.Chain;

public class MetalTests
{
    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Of_NoMass_IsRefused(double kg)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Metal.Of(kg, Analysis.Empty));
        Assert.Throws<ArgumentOutOfRangeException>(() => Metal.None.Plus(Arrival.PerKilogram(new() { Analysis = Analysis.Empty }), kg));
        Assert.Throws<ArgumentOutOfRangeException>(() => Metal.Of(10, Analysis.Empty).Less(kg));
    }

    [Fact]
    public void None_EmptyFurnace_HasNoPercents()
    {
        Assert.Equal(0, Metal.None.Percent(Element.C));
        Assert.Equal(Analysis.Empty, Metal.None.Analysis);
        Assert.Equal(0, Metal.Of(10, Analysis.Of((Element.C, 3.5))).Less(10).Kg);
    }

    [Fact]
    public void Plus_HeelWithoutAnElement_CountsItAsZeroOnlyWhereItArrives()
    {
        var bath = Metal.Of(600, Analysis.Of((Element.C, 3.6))).Plus(
            Arrival.PerKilogram(new()
            {
                Analysis = Analysis.Of((Element.C, 0.1), (Element.Mn, 0.9)),
                MetallicYieldPercent = 98,
                RecoveryPercent = new Dictionary<Element, double> { [Element.C] = 95, [Element.Mn] = 92 },
            }),
            1000);

        // By hand: 980 kg melt in, of which C 0.931, Mn 8.1144 and iron 970.2 arrive.
        Assert.Equal(600 + 970.2 + 0.931 + 8.1144, bath.Kg, 9);
        Assert.Equal(21.6 + 0.931, bath.ElementKg(Element.C), 9);
        Assert.Equal(100 * 8.1144 / 1579.2454, bath.Percent(Element.Mn), 9);
        Assert.False(bath.Analysis.Has(Element.Si));
    }

    [Fact]
    public void LinearQuantity_OfAnElement_IsItsPercentAndNamesWhatItLacks()
    {
        var quantity = LinearQuantity.Of(Element.Si);

        Assert.Equal("Si", quantity.Name);
        Assert.Equal(2.1, quantity.Value(Analysis.Of((Element.Si, 2.1))));
        Assert.Equal([Element.Si], quantity.AssumedZero(Analysis.Empty));
        Assert.Equal(5, new LinearQuantity("own", new Dictionary<Element, double> { [Element.Si] = 2 }, 1).Value(Analysis.Of((Element.Si, 2))));
    }
}
