using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Tests.Elements;

public class ElementFigures
{
    // Elements of a foundry's spectrometer report.
    [Theory]
    [Printed("IUPAC, Standard Atomic Weights 2021, abridged values (from memory)")]
    [InlineData("C", 12.011)]
    [InlineData("Si", 28.085)]
    [InlineData("Mn", 54.938)]
    [InlineData("P", 30.974)]
    [InlineData("S", 32.06)]
    [InlineData("Cr", 51.996)]
    [InlineData("Ni", 58.693)]
    [InlineData("Mo", 95.95)]
    [InlineData("Cu", 63.546)]
    [InlineData("Mg", 24.305)]
    [InlineData("Al", 26.982)]
    [InlineData("Ti", 47.867)]
    [InlineData("V", 50.942)]
    [InlineData("Nb", 92.906)]
    [InlineData("W", 183.84)]
    [InlineData("Co", 58.933)]
    [InlineData("Sn", 118.71)]
    [InlineData("As", 74.922)]
    [InlineData("Sb", 121.76)]
    [InlineData("Pb", 207.2)]
    [InlineData("Bi", 208.98)]
    [InlineData("B", 10.81)]
    [InlineData("Ce", 140.12)]
    [InlineData("La", 138.91)]
    [InlineData("Te", 127.60)]
    [InlineData("Zn", 65.38)]
    [InlineData("Zr", 91.224)]
    [InlineData("Ca", 40.078)]
    [InlineData("N", 14.007)]
    [InlineData("O", 15.999)]
    [InlineData("H", 1.008)]
    [InlineData("Fe", 55.845)]
    public void AtomicMass_Element_IsThePublishedOne(string symbol, double expected) => Assert.Equal(expected, Element.Parse(symbol).AtomicMass);

    // Customary decimals of a report: common practice, no source.
    [Theory]
    [InlineData(2, "C Si Mn Cr Ni Mo Cu")]
    [InlineData(3, "P S Mg Ti Al Sn V Ce")]
    [InlineData(4, "Pb Bi B Te Sb")]
    public void Decimals_Element_AreTheCustomaryOnes(int decimals, string symbols) =>
        Assert.All(symbols.Split(' '), symbol => Assert.Equal(decimals, Element.Parse(symbol).Decimals));

    [Fact]
    public void CompareTo_Nothing_ComesAfterIt()
    {
        Assert.Equal(1, Element.C.CompareTo(null));
        Assert.Equal("C", Element.C.ToString());
    }
}
