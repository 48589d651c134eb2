using MeltShop.Metallurgy.Grades;

namespace MeltShop.Metallurgy.Tests.Grades;

public class GuideTests
{
    // J. D. Mullins, Sorelmetal Suggestion Sheet 80: most of each tramp element in ductile iron.
    [Theory]
    [Printed("J. D. Mullins, Sorelmetal Suggestion Sheet 80")]
    [InlineData("Al", 0.03)]
    [InlineData("As", 0.01)]
    [InlineData("B", 0.002)]
    [InlineData("Bi", 0.002)]
    [InlineData("Cd", 0.002)]
    [InlineData("Pb", 0.002)]
    [InlineData("Sb", 0.003)]
    [InlineData("Se", 0.002)]
    [InlineData("Te", 0.002)]
    [InlineData("Zr", 0.01)]
    public void Ductile_TrampElement_HasThePrintedMost(string symbol, double most) =>
        Assert.Equal(most, TraceGuide.Ductile.Single(l => l.Element.Symbol == symbol).MostPercent);

    [Fact]
    [Printed("BCIRA Broadsheet 41")]
    public void Nitrogen_HeavyCastings_TolerateLess() =>
        Assert.Equal([0.013, 0.008], TraceGuide.Nitrogen.Select(l => l.MostPercent)); // BCIRA Broadsheet 41

    // By hand from C = T/420 − 0.17 Si − 0.95 (Voigt and Loper, from memory), Si 2.5.
    [Theory]
    [InlineData(850, 0.649)]
    [InlineData(900, 0.768)]
    [InlineData(925, 0.827)]
    [InlineData(950, 0.887)]
    public void AusteniteCarbon_Temperatures_AreAsWorkedOut(double temperatureC, double expected) =>
        Assert.Equal(expected, AustemperingGuide.AusteniteCarbonPercent(temperatureC, 2.5), 3);

    [Fact]
    public void Baths_StrongerGrade_IsAustemperedColder()
    {
        Assert.All(AustemperingGuide.Baths.Zip(AustemperingGuide.Baths.Skip(1)), pair => Assert.True(pair.Second.MostC < pair.First.MostC));
        Assert.All(AustemperingGuide.Baths, b => Assert.NotNull(GradeProperties.For(b.Grade)));
    }

    [Fact]
    public void Hardenability_WithoutASource_IsRefused() => Assert.Equal("adi.noHardenability", AustemperingGuide.HardenabilityRefused.Code);
}
