using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Tests.Elements;

public class ElementTests
{
    // Stoichiometry of desulphurising with IUPAC's atomic masses, kilograms per kilogram of sulphur (by hand).
    [Theory]
    [InlineData("Mg", 1, 1, 0.7581)]
    [InlineData("Ca", 1, 1, 1.250)]
    [InlineData("Ce", 2, 3, 2.914)]
    [InlineData("Ce", 1, 1, 4.370)]
    [InlineData("La", 2, 3, 2.888)]
    [InlineData("La", 1, 1, 4.333)]
    [InlineData("Mn", 1, 1, 1.714)]
    public void AtomicMass_PerSulphur_GivesTheKnownRatios(string symbol, int metal, int sulphur, double expected) =>
        Law.Near(expected, metal * Element.Parse(symbol).AtomicMass / (sulphur * Element.S.AtomicMass), 0.001);

    [Fact]
    public void AtomicMass_OfCompounds_GivesTheKnownRatios()
    {
        // By hand: MgO, CaO, calcium carbide and soda per sulphur; the carbon and silicon that a kilogram of rust (Fe2O3) burns; 53.4 % sulphur in pyrite.
        var (c, o, s, ca, fe) = (Element.C.AtomicMass, Mass("O"), Element.S.AtomicMass, Mass("Ca"), Element.Fe.AtomicMass);
        var rust = 2 * fe + 3 * o;

        Law.Near(1.519, Element.Mg.AtomicMass / o, 0.0006);
        Law.Near(1.749, (ca + o) / s, 0.0006);
        Law.Near(1.999, (ca + 2 * c) / s, 0.0006);
        Law.Near(3.306, (2 * Mass("Na") + c + 3 * o) / s, 0.0006);
        Law.Near(0.226, 3 * c / rust, 0.0006);
        Law.Near(0.264, 1.5 * Element.Si.AtomicMass / rust, 0.0006);
        Law.Near(53.4, 100 * 2 * s / (fe + 2 * s), 0.06);

        static double Mass(string symbol) => Element.Parse(symbol).AtomicMass;
    }

    [Fact]
    public void All_Elements_AreOrderedAndUnique()
    {
        Assert.True(Element.All.Count >= 30);
        Assert.Distinct(Element.All.Select(e => e.Symbol));
        Assert.Equal(Element.All, Element.All.Order());
        Assert.Equal(["C", "Si", "Mn", "P", "S"], Element.All.Take(5).Select(e => e.Symbol));
        Assert.All(Element.All, e => Assert.InRange(e.Decimals, 2, 5));
    }

    [Theory]
    [InlineData("si")]
    [InlineData("CO")]
    [InlineData("")]
    [InlineData(null)]
    public void TryParse_NoSymbol_IsRefused(string? symbol)
    {
        Assert.False(Element.TryParse(symbol, out _));
        Assert.Throws<ArgumentException>(() => Element.Parse(symbol ?? "none"));
    }
}
