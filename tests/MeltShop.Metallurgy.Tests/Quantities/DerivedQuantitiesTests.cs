using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Tests.Quantities;

public class DerivedQuantitiesTests
{
    // Own composition; each value worked out by hand from the contract's expressions.
    private static readonly Analysis Poured = Analysis.Of(
        (Element.C, 3.30), (Element.Si, 2.40), (Element.Mn, 0.30), (Element.P, 0.05), (Element.S, 0.010), (Element.Cu, 0.40), (Element.Sn, 0.005),
        (Element.Pb, 0.0005), (Element.Bi, 0.0001), (Element.As, 0.003), (Element.Cr, 0.03), (Element.Sb, 0.0005), (Element.Ti, 0.012), (Element.Al, 0.012));

    [Theory]
    [InlineData("CE", 4.116666667)]
    [InlineData("Sc", 0.958373669)]
    [InlineData("CEL", 3.925)]
    [InlineData("liquidusC", 1187.0975)]
    [InlineData("manganeseBalance", 0.283)]
    [InlineData("pearliteFactor", 3.98595)]
    [InlineData("ferritePercent", 17.850373)]
    [InlineData("traceFactor", 0.274)]
    public void Of_FullAnalysis_GivesEachQuantity(string name, double expected)
    {
        var quantity = Single(Poured, name);

        Assert.Equal(expected, quantity.Value!.Value, 6);
        Assert.Null(quantity.Why);
        Assert.Empty(quantity.AssumedZero);
        Assert.NotEmpty(quantity.Source);
    }

    [Fact]
    public void Of_AnyAnalysis_KeepsTheOrderOfTheContract() =>
        Assert.Equal(
            ["CE", "Sc", "CEL", "liquidusC", "manganeseBalance", "pearliteFactor", "ferritePercent", "traceFactor"],
            DerivedQuantities.Of(Analysis.Empty).Select(q => q.Name));

    [Fact]
    public void Of_NothingMeasured_GivesNoValueAndSaysWhatIsNeeded()
    {
        var quantities = DerivedQuantities.Of(Analysis.Empty);

        Assert.All(quantities, q => Assert.Null(q.Value));
        Assert.All(quantities, q => Assert.Empty(q.AssumedZero));
        Assert.Equal(["C, Si"], quantities[0].Why!.Arguments);
        Assert.Equal(["Mn, Si, Cu"], quantities[5].Why!.Arguments);
        Assert.Equal("quantity.needsOneOf", quantities[7].Why!.Code);
    }

    [Fact]
    public void Of_PhosphorusNotMeasured_IsTakenAsZeroAndNamed()
    {
        var quantity = Single(Analysis.Of((Element.C, 3.3), (Element.Si, 2.4)), "CE");

        Assert.Equal(4.1, quantity.Value!.Value, 12);
        Assert.Equal([Element.P], quantity.AssumedZero);
    }

    [Fact]
    public void Of_PearliteWithoutTraces_NamesWhatItTookAsZero()
    {
        var quantity = Single(Analysis.Of((Element.Mn, 0.3), (Element.Si, 2.4), (Element.Cu, 0.4)), "ferritePercent");

        Assert.Equal(["Cr", "Sn", "As", "Sb", "Pb", "Bi"], quantity.AssumedZero.Select(e => e.Symbol));
    }

    [Fact]
    public void Of_OtherForm_IsNamedAndUsed()
    {
        var quantity = DerivedQuantities.Of(Poured, CarbonEquivalent.Find("CE-b"))[0];

        Assert.Equal(4.1, quantity.Value!.Value, 12);
        Assert.StartsWith("CE-b", quantity.Expression, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(4.34, true)]
    [InlineData(4.35, false)]
    public void Of_LiquidusPastItsLine_IsWithheld(double carbonPercent, bool given)
    {
        var quantity = Single(Analysis.Of((Element.C, carbonPercent), (Element.Si, 0)), "liquidusC");

        Assert.Equal(given, quantity.Value is not null);
        Assert.Equal(given ? null : "quantity.aboveEutectic", quantity.Why?.Code);
    }

    [Theory]
    [InlineData(0.0199, true)]
    [InlineData(0.02, false)]
    public void Of_ManganeseBalanceOfTreatedIron_IsWithheld(double magnesiumPercent, bool given) =>
        Assert.Equal(given, Single(Poured.With(Element.Mg, magnesiumPercent), "manganeseBalance").Value is not null);

    [Fact]
    public void Of_OneTraceElement_IsEnough()
    {
        var quantity = Single(Analysis.Of((Element.Ti, 0.1)), "traceFactor");

        Assert.Equal(0.44, quantity.Value!.Value, 12);
        Assert.Equal(6, quantity.AssumedZero.Count);
    }

    [Fact]
    public void Of_SiliconBeyondAnyEutecticCarbon_HasNoSaturation() =>
        Assert.Equal("quantity.outOfRange", Single(Analysis.Of((Element.C, 1), (Element.Si, 15)), "Sc").Why?.Code);

    [Fact]
    public void Of_VeryPearliticAndVeryFerriticIron_StaysBetweenNoneAndAll()
    {
        // Giesserei-Lexikon, entry Perlitwertzahl: all ferrite up to a factor of 2.263.
        Assert.Equal(100, Single(Analysis.Of((Element.Mn, 0.1), (Element.Si, 2.8), (Element.Cu, 0)), "ferritePercent").Value);
        Assert.InRange(Single(Analysis.Of((Element.Mn, 0.5), (Element.Si, 2.0), (Element.Cu, 1.5)), "ferritePercent").Value!.Value, 0, 0.01);
    }

    [Theory]
    [Printed("Giesserei-Lexikon, entry Perlitwertzahl (after T. Thielmann); tin with 90, not the 9.0 of the extract; input our own, by hand")]
    [InlineData(0.30, 2.5, 0.30, 0.005, 0.04, 62.4)]
    [InlineData(0.35, 2.4, 0.60, 0.02, 0.05, 0.9)]
    public void Of_IronBetweenFerriteAndPearlite_HasTheFerriteOfTheFormula(double mn, double si, double cu, double sn, double cr, double ferrite) =>
        Assert.Equal(ferrite, Single(Analysis.Of((Element.Mn, mn), (Element.Si, si), (Element.Cu, cu), (Element.Sn, sn), (Element.Cr, cr)), "ferritePercent").Value!.Value, 0.05);

    [Fact]
    [Printed("Giesserei-Lexikon, entry Spurenbewertungszahl (after T. Thielmann); input our own, by hand")]
    public void Of_AllSevenTraces_HasTheSumOfTheFormula()
    {
        // 0.066 + 0.010 + 0.0115 + 0.005 + 0.145 + 0.037 + 0.016
        var traces = Analysis.Of(
            (Element.Ti, 0.015), (Element.As, 0.005), (Element.Sn, 0.005), (Element.Sb, 0.001), (Element.Pb, 0.0005), (Element.Bi, 0.0001), (Element.Al, 0.010));

        Assert.Equal(0.2905, Single(traces, "traceFactor").Value!.Value, 1e-9);
    }

    [Fact]
    public void Linear_Rows_AreWhatTheQuantitiesSay()
    {
        var values = DerivedQuantities.Of(Poured).ToDictionary(q => q.Name, q => q.Value);

        Assert.All(DerivedQuantities.Linear(), row => Assert.Equal(values[row.Name]!.Value, row.Value(Poured), 12));
    }

    private static DerivedQuantity Single(Analysis analysis, string name) => DerivedQuantities.Of(analysis).Single(q => q.Name == name);
}
