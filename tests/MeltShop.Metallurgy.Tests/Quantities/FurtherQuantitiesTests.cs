using CsCheck;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Tests.Quantities;

public class FurtherQuantitiesTests
{
    private static readonly Analysis Grey = Analysis.Of(
        (Element.C, 3.30), (Element.Si, 2.00), (Element.Mn, 0.60), (Element.P, 0.05), (Element.S, 0.08), (Element.N, 0.012), (Element.Ti, 0.020));

    // By hand: Sc = 3.30/(4.26 − 0.62 − 0.0135); the temperatures from their expressions.
    [Theory]
    [InlineData("ScLong", 0.909967, IronState.Any)]
    [InlineData("alloyedLiquidusC", 1206.37, IronState.Any)]
    [InlineData("greyEutecticC", 1166.4, IronState.Any)]
    [InlineData("whiteEutecticC", 1123, IronState.Any)]
    [InlineData("crucibleEquilibriumC", 1422.9, IronState.Furnace)]
    [InlineData("crucibleBoilingC", 1481.2, IronState.Furnace)]
    [InlineData("freeNitrogen", 0.0061475, IronState.Any)]
    [InlineData("normalStrengthMPa", 266.68, IronState.Poured)]
    [InlineData("carbonSolubility", 4.3708, IronState.Furnace)]
    [InlineData("maturityPercent", 93.75, IronState.Poured)]
    public void Of_GreyIron_GivesValueIronAndSource(string name, double expected, IronState iron)
    {
        var quantity = Single(Grey, name);

        Law.Near(expected, quantity.Value!.Value, expected * 5e-5);
        Assert.Equal(iron, quantity.Iron);
        Assert.NotEmpty(quantity.Source);
        Assert.NotEmpty(quantity.Expression);
        Assert.Null(quantity.Why);
    }

    [Fact]
    public void Of_OnlyCarbonAndSilicon_NamesWhatItTookAsZero()
    {
        var bare = Analysis.Of((Element.C, 3.3), (Element.Si, 2));

        Assert.Equal("P", string.Join(' ', Single(bare, "ScLong").AssumedZero));
        Assert.Equal("Mn P S Ni Cr", string.Join(' ', Single(bare, "alloyedLiquidusC").AssumedZero));
        Assert.Equal("Mn P S", string.Join(' ', Single(bare, "carbonSolubility").AssumedZero));
        Assert.Empty(Single(bare, "crucibleBoilingC").AssumedZero);
    }

    [Fact]
    public void Of_NothingMeasured_SaysWhatIsNeeded()
    {
        var quantities = FurtherQuantities.Of(Analysis.Empty, 1450, 250);

        Assert.All(quantities, q => Assert.Equal("quantity.needs", q.Why!.Code));
        Assert.All(quantities, q => Assert.Null(q.Value));
        Assert.Equal("C, Si", quantities[0].Why!.Arguments[0]);
        Assert.Equal(8, FurtherQuantities.Of(Analysis.Empty).Count);
    }

    [Fact]
    public void Of_MagnesiumTreatedIron_HasNoGreyStrength()
    {
        Assert.Equal("quantity.magnesiumTreated", Single(Grey.With(Element.Mg, 0.02), "normalStrengthMPa").Why!.Code);
        Assert.NotNull(Single(Grey.With(Element.Mg, 0.0199), "maturityPercent").Value);
    }

    [Theory]
    [InlineData(3.1, 4.0, "quantity.outOfRange")] // Sc 1.026
    [InlineData(3.6, 2.0, null)] // Sc 0.989
    [InlineData(2.5, 1.9, "quantity.outOfRange")] // Sc 0.681
    [InlineData(2.6, 1.9, null)] // Sc 0.708
    public void Of_SaturationOutsideTheFormulas_GivesNoStrength(double carbon, double silicon, string? code) =>
        Assert.Equal(code, Single(Analysis.Of((Element.C, carbon), (Element.Si, silicon), (Element.P, 0)), "normalStrengthMPa").Why?.Code);

    [Fact]
    public void Of_NoSilicon_HasNoCrucibleTemperature()
    {
        Assert.Equal("quantity.outOfRange", Single(Grey.With(Element.Si, 0), "crucibleEquilibriumC").Why!.Code);
        Assert.Equal("quantity.aboveEutectic", Single(Grey.With(Element.C, 3.9), "alloyedLiquidusC").Why!.Code);
        Assert.NotNull(Single(Analysis.Of((Element.C, 4.34), (Element.Si, 0)), "alloyedLiquidusC").Value);
    }

    [Fact]
    public void FreeNitrogen_AnyIron_LiesBetweenNoneAndAll() => Law.Holds(Gen.Select(Gen.Double[0, 0.03], Gen.Double[0, 0.2]), one =>
        Assert.InRange(Nitrogen.LeastFreePercent(one.Item1, one.Item2), 0, one.Item1));

    private static DerivedQuantity Single(Analysis analysis, string name) => FurtherQuantities.Of(analysis, 1450, 250).Single(q => q.Name == name);
}
