using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Tests.Quantities;

public class CarbonEquivalentTests
{
    // Source: J. Radzikowska, G. Vander Voort, Tech-Note on the metallography of cast irons, table of compositions with printed CE.
    public static TheoryData<double, double, double, double> Printed => new()
    {
        { 2.1, 2.8, .06, 3.05 }, { 2.8, 1.85, .04, 3.43 }, { 3.5, 2.95, .08, 4.51 }, { 3.5, 2.7, .13, 4.44 }, { 4.3, 1.5, .12, 4.84 },
        { 3.45, 2.55, .04, 4.31 }, { 3.6, 2.9, .04, 4.58 }, { 3.7, 2.3, .03, 4.48 }, { 3.6, 2.9, .04, 4.58 }, { 3.3, 1.64, 1.42, 4.32 },
        { 3.3, 1.9, .49, 4.10 }, { 3.7, 1.25, .02, 4.12 }, { 3.7, 1.25, .02, 4.12 }, { 2.8, 2.8, .045, 3.75 }, { 3.0, 2.7, .07, 3.92 },
    };

    [Theory]
    [Printed("J. Radzikowska, G. Vander Voort, Tech-Note on the metallography of cast irons")]
    [MemberData(nameof(Printed))]
    public void Of_PrintedComposition_GivesThePrintedValue(double c, double si, double p, double expected)
    {
        var analysis = Analysis.Of((Element.C, c), (Element.Si, si), (Element.P, p));

        Assert.InRange(CarbonEquivalent.Of(analysis, CarbonEquivalent.Default), expected - 0.0035, expected + 0.0035);
    }

    [Fact]
    public void Of_PhosphorusRichIron_TellsTheFormsApart()
    {
        // The same table: 4.32 is printed, the form without phosphorus gives 3.85.
        var analysis = Analysis.Of((Element.C, 3.3), (Element.Si, 1.64), (Element.P, 1.42));

        Assert.Equal(3.8467, CarbonEquivalent.Of(analysis, CarbonEquivalent.Find("CE-b")!), 4);
    }

    [Theory]
    [InlineData("CE-a", 4.0133333)]
    [InlineData("CE-b", 4.0)]
    [InlineData("CE-c", 3.9663)]
    [InlineData("CE-d", 3.9821)]
    [InlineData("CE-e", 4.016)]
    [InlineData("CE-y", 3.945)]
    public void Of_EachForm_GivesWhatItsExpressionSays(string id, double expected)
    {
        // Worked out by hand from the expressions.
        var analysis = Analysis.Of(
            (Element.C, 3.33), (Element.Si, 2.01), (Element.P, 0.04), (Element.Mn, 0.6), (Element.S, 0.08),
            (Element.Ni, 0.2), (Element.Cu, 0.4), (Element.Cr, 0.1));

        Assert.Equal(expected, CarbonEquivalent.Of(analysis, CarbonEquivalent.Find(id)!), 6);
    }

    [Theory]
    [InlineData("CE-x")] // 0.54 P: a remark in a forum, left out on purpose
    [InlineData("CEL-a")] // a liquidus equivalent: another question
    [InlineData("")]
    public void Find_NoSuchForm_IsNull(string id) => Assert.Null(CarbonEquivalent.Find(id));
}
