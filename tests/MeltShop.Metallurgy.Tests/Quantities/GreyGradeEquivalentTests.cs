using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Tests.Quantities;

public class GreyGradeEquivalentTests
{
    // ASTM A159 / SAE J431 composition table as reproduced on a grade page: C, Si, and CE as a range of its own. The middle of C and Si lies inside that range, both
    // least below it and both most above it: carbon equivalent binds by itself. The page's class minima and the normal strength leave 28 to 46 % in reserve.
    [Theory]
    [Printed("ASTM A159 / SAE J431, composition table as reproduced on a grade page")]
    [InlineData("G1800", 3.40, 3.70, 2.30, 2.80, 4.25, 4.50, 124)]
    [InlineData("G2500", 3.20, 3.50, 2.00, 2.40, 4.00, 4.25, 172)]
    [InlineData("G3000", 3.10, 3.40, 1.90, 2.30, 3.90, 4.15, 207)]
    [InlineData("G3500", 3.00, 3.30, 1.80, 2.20, 3.70, 3.90, 241)]
    public void CarbonEquivalent_OfAPublishedGrade_BindsByItself(
        string grade, double carbonLeast, double carbonMost, double siliconLeast, double siliconMost, double least, double most, double strengthMPa)
    {
        var (carbon, silicon) = ((carbonLeast + carbonMost) / 2, (siliconLeast + siliconMost) / 2);

        Assert.InRange(Equivalent(carbon, silicon), least, most);
        Assert.True(Equivalent(carbonLeast, siliconLeast) < least, grade);
        Assert.True(Equivalent(carbonMost, siliconMost) > most, grade);
        Assert.InRange(GreyStrength.NormalRoundedMPa(Saturation.LongDegree(carbon, silicon, 0)) / strengthMPa, 1.275, 1.465);
    }

    [Fact]
    public void EutecticIron_HasItsOwnCarbonEquivalentAndNotMore()
    {
        // A negative check: an examination question prints CE = 4.3 + 0.3·(1.5 + 0.14) = 4.8 for a "eutectic iron". Its carbon falls to 3.81 instead.
        var carbon = 4.3 - 0.3 * 1.64;

        Assert.Equal(3.81, carbon, 2);
        Assert.Equal(4.3, CarbonEquivalent.Of(Analysis.Of((Element.C, carbon), (Element.Si, 1.5), (Element.P, 0.14)), CarbonEquivalent.Find("CE-y")!), 9);
    }

    // Rule of the trade after AFS 03-072 (Goodrich, Oakwood, Gundlach, 2003): Mn = 1.7 S + 0.3.
    [Theory]
    [InlineData(0.03, 0.351)]
    [InlineData(0.06, 0.402)]
    [InlineData(0.08, 0.436)]
    [InlineData(0.12, 0.504)]
    public void ManganeseBalance_OfTheOldRule_IsThreeTenths(double sulphur, double manganese) =>
        Assert.Equal(0.3, ManganeseBalance.Quantity.Value(Analysis.Of((Element.Mn, manganese), (Element.S, sulphur))), 9);

    // S. Koriyama et al., International Journal of Metalcasting, 2020: the printed carbon equivalent is the temperature over 110.
    [Theory]
    [Printed("S. Koriyama et al., International Journal of Metalcasting, 2020")]
    [InlineData("Si", 0.23)]
    [InlineData("Mn", -0.03)]
    [InlineData("P", 0.32)]
    [InlineData("S", 0.64)]
    [InlineData("Ni", 0.02)]
    [InlineData("Cr", 0.06)]
    public void AlloyedLiquidus_OverItsCarbon_IsThePrintedEquivalent(string symbol, double printed) =>
        Law.Near(printed, AlloyedLiquidus.Quantity.Terms[Element.Parse(symbol)] / AlloyedLiquidus.Quantity.Terms[Element.C], 0.006);

    private static double Equivalent(double carbon, double silicon) =>
        CarbonEquivalent.Of(Analysis.Of((Element.C, carbon), (Element.Si, silicon)), CarbonEquivalent.Find("CE-b")!);
}
